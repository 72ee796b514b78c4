//! Where a file can be spoiled, and how.

use crate::values::{self, Given};
use proc_macro2::Span;
use std::ops::Range;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{Attribute, BinOp, Block, Expr, ImplItemFn, ItemFn, ItemImpl, ItemMod, Meta, Pat, Signature, UnOp};

/// One fault.
#[derive(Clone, Debug)]
pub struct Mutant {
    /// What stands in place of the site's text.
    pub text: String,
    /// For a person: line, function, what was done.
    pub label: String,
}

/// How the faults of a site are put beside its own text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// An expression: each fault is another one.
    Expr,
    /// The start of a body: each fault returns its text.
    Body,
    /// A body that gives an iterator: the fault gives none of it.
    Empty,
    /// The end of a pattern: the fault never takes this arm.
    Arm,
    /// The word `const` of a function, which no switch can stand in: it is left out.
    Const,
}

/// A place in the text with what may stand there.
#[derive(Clone, Debug)]
pub struct Site {
    /// Bytes of the file.
    pub at: Range<usize>,
    /// How it is put in.
    pub form: Form,
    /// The function it is in.
    pub of: String,
    /// What may stand there.
    pub mutants: Vec<Mutant>,
}

/// All sites of a file, in the order in which they are opened.
pub fn sites(text: &str) -> Vec<Site> {
    let file = syn::parse_file(text).unwrap_or_else(|error| panic!("not read: {error}"));
    let mut finder = Finder {
        text,
        path: Vec::new(),
        found: Vec::new(),
    };
    finder.visit_file(&file);
    finder
        .found
        .retain(|site| site.form == Form::Const || !site.mutants.is_empty());
    // What is inserted at a place comes before what begins there; of two that begin at one place the wider one.
    finder
        .found
        .sort_by_key(|site| (site.at.start, !site.at.is_empty(), std::cmp::Reverse(site.at.end)));
    finder.found
}

struct Finder<'a> {
    text: &'a str,
    path: Vec<String>,
    found: Vec<Site>,
}

/// Words for what is only there for tests or for the page's types.
fn is_left_out(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| match &attribute.meta {
        Meta::List(list) => list.path.is_ident("cfg"),
        meta => meta.path().is_ident("test"),
    })
}

/// What is done by a method of that name in place of it; the crate's exact arithmetic has names for its operators.
fn other_methods(name: &str, arguments: usize) -> &'static [&'static str] {
    match (name, arguments) {
        ("plus", 1) => &["less", "times"],
        ("less", 1) => &["plus"],
        ("times", 1) => &["over", "plus"],
        ("over", 1) => &["times"],
        ("down_to" | "up_to", 1) => &["nearest"],
        ("nearest", 1) => &["down_to", "up_to"],
        ("saturating_add", 1) => &["saturating_sub"],
        ("saturating_sub", 1) => &["saturating_add"],
        ("checked_add", 1) => &["checked_sub"],
        ("checked_sub", 1) => &["checked_add"],
        ("checked_mul", 1) => &["checked_div"],
        ("checked_div", 1) => &["checked_mul"],
        ("min", 0 | 1) => &["max"],
        ("max", 0 | 1) => &["min"],
        ("min_by_key", 1) => &["max_by_key"],
        ("max_by_key", 1) => &["min_by_key"],
        ("any", 1) => &["all"],
        ("all", 1) => &["any"],
        ("is_some", 0) => &["is_none"],
        ("is_none", 0) => &["is_some"],
        ("is_some_and", 1) => &["is_none_or"],
        ("is_none_or", 1) => &["is_some_and"],
        ("first", 0) => &["last"],
        ("last", 0) => &["first"],
        ("floor", 0) => &["ceil"],
        ("ceil", 0) => &["floor"],
        _ => &[],
    }
}

fn other_operators(op: &BinOp) -> &'static [&'static str] {
    match op {
        BinOp::Eq(_) => &["!="],
        BinOp::Ne(_) => &["=="],
        BinOp::Lt(_) => &["<=", "==", ">"],
        BinOp::Le(_) => &["<", ">"],
        BinOp::Gt(_) => &[">=", "==", "<"],
        BinOp::Ge(_) => &[">", "<"],
        BinOp::And(_) => &["||"],
        BinOp::Or(_) => &["&&"],
        BinOp::Add(_) => &["-", "*"],
        BinOp::Sub(_) | BinOp::Mul(_) => &["+", "/"],
        BinOp::Div(_) => &["%", "*"],
        BinOp::Rem(_) => &["/", "+"],
        BinOp::BitAnd(_) => &["|", "^"],
        BinOp::BitOr(_) => &["&", "^"],
        BinOp::BitXor(_) => &["&", "|"],
        BinOp::Shl(_) => &[">>"],
        BinOp::Shr(_) => &["<<"],
        BinOp::AddAssign(_) => &["-=", "*="],
        BinOp::SubAssign(_) | BinOp::MulAssign(_) => &["+=", "/="],
        BinOp::DivAssign(_) => &["%=", "*="],
        _ => &[],
    }
}

fn has_let(expr: &Expr) -> bool {
    match expr {
        Expr::Let(_) => true,
        Expr::Binary(binary) => has_let(&binary.left) || has_let(&binary.right),
        Expr::Paren(paren) => has_let(&paren.expr),
        _ => false,
    }
}

/// A condition whose own faults do not turn it round.
fn is_bare(expr: &Expr) -> bool {
    match expr {
        Expr::Paren(paren) => is_bare(&paren.expr),
        Expr::Unary(_) | Expr::Binary(_) | Expr::Let(_) => false,
        Expr::MethodCall(call) => other_methods(&call.method.to_string(), call.args.len()).is_empty(),
        _ => true,
    }
}

impl Finder<'_> {
    fn add(&mut self, at: Range<usize>, form: Form, span: Span, mutants: impl IntoIterator<Item = (String, String)>) {
        let (start, of) = (span.start(), self.path.join("::"));
        let mutants = mutants.into_iter().map(|(text, did)| Mutant {
            text,
            label: format!("{}:{} {of}: {did}", start.line, start.column + 1),
        });
        let mutants = mutants.collect();
        self.found.push(Site { at, form, of, mutants });
    }

    /// Other words in place of one within an expression.
    fn swap(&mut self, whole: Span, part: Span, others: &[&str]) {
        let (at, inner) = (whole.byte_range(), part.byte_range());
        let (head, tail) = (
            self.text[at.start..inner.start].to_owned(),
            self.text[inner.end..at.end].to_owned(),
        );
        let was = self.text[inner].to_owned();
        let made = others
            .iter()
            .map(|other| (format!("{head}{other}{tail}"), format!("{other} for {was}")));
        self.add(at, Form::Expr, part, made.collect::<Vec<_>>());
    }

    fn function(&mut self, signature: &Signature, block: &Block, of_trait: bool) {
        self.path.push(signature.ident.to_string());
        if let Some(word) = signature.constness {
            self.add(word.span.byte_range(), Form::Const, word.span, []);
        }
        let inner = block.brace_token.span.open().byte_range().end..block.brace_token.span.close().byte_range().start;
        let own = self.text[inner.clone()].trim().to_owned();
        let span = signature.ident.span();
        match values::of(&signature.output) {
            _ if own.is_empty() || (of_trait && signature.ident == "default") => {}
            Given::Values(values) => {
                let made = values.into_iter().filter(|value| *value != own);
                let made = made.map(|value| (value.clone(), format!("gives {value}")));
                self.add(inner.start..inner.start, Form::Body, span, made.collect::<Vec<_>>());
            }
            Given::NoElement => {
                self.add(
                    inner,
                    Form::Empty,
                    span,
                    [(String::new(), "gives no element".to_owned())],
                );
            }
        }
        self.visit_block(block);
        self.path.pop();
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item_mod(&mut self, item: &'ast ItemMod) {
        if !is_left_out(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        if !is_left_out(&item.attrs) {
            self.function(&item.sig, &item.block, false);
        }
    }

    fn visit_item_impl(&mut self, item: &'ast ItemImpl) {
        let of = item.trait_.as_ref().and_then(|(_, path, _)| path.segments.last());
        // How a value is printed for whoever debugs is no answer.
        if is_left_out(&item.attrs) || of.is_some_and(|last| last.ident == "Debug" || last.ident == "Display") {
            return;
        }
        let name = self.text[item.self_ty.span().byte_range()].to_owned();
        self.path.push(name);
        for inner in &item.items {
            if let syn::ImplItem::Fn(inner) = inner {
                self.method(inner, of.is_some());
            }
        }
        self.path.pop();
    }

    fn visit_expr_binary(&mut self, expr: &'ast syn::ExprBinary) {
        if !(has_let(&expr.left) || has_let(&expr.right)) {
            self.swap(expr.span(), expr.op.span(), other_operators(&expr.op));
        }
        visit::visit_expr_binary(self, expr);
    }

    fn visit_expr_unary(&mut self, expr: &'ast syn::ExprUnary) {
        if matches!(expr.op, UnOp::Not(_) | UnOp::Neg(_)) {
            self.swap(expr.span(), expr.op.span(), &[" "]);
        }
        visit::visit_expr_unary(self, expr);
    }

    fn visit_expr_method_call(&mut self, call: &'ast syn::ExprMethodCall) {
        let others = other_methods(&call.method.to_string(), call.args.len());
        self.swap(call.span(), call.method.span(), others);
        visit::visit_expr_method_call(self, call);
    }

    fn visit_expr_if(&mut self, expr: &'ast syn::ExprIf) {
        if is_bare(&expr.cond) {
            let at = expr.cond.span().byte_range();
            let text = format!("!({})", &self.text[at.clone()]);
            self.add(
                at,
                Form::Expr,
                expr.cond.span(),
                [(text, "condition turned round".to_owned())],
            );
        }
        visit::visit_expr_if(self, expr);
    }

    fn visit_expr_match(&mut self, expr: &'ast syn::ExprMatch) {
        let wild = expr
            .arms
            .iter()
            .any(|arm| matches!(arm.pat, Pat::Wild(_)) && arm.guard.is_none());
        for arm in &expr.arms {
            match &arm.guard {
                Some((_, guard)) if !has_let(guard) => {
                    let made = ["true", "false"].map(|value| (value.to_owned(), format!("guard {value}")));
                    self.add(guard.span().byte_range(), Form::Expr, guard.span(), made);
                }
                None if wild && !matches!(arm.pat, Pat::Wild(_)) => {
                    let end = arm.pat.span().byte_range().end;
                    self.add(
                        end..end,
                        Form::Arm,
                        arm.pat.span(),
                        [(String::new(), "arm left out".to_owned())],
                    );
                }
                _ => {}
            }
        }
        visit::visit_expr_match(self, expr);
    }

    fn visit_expr_repeat(&mut self, expr: &'ast syn::ExprRepeat) {
        self.visit_expr(&expr.expr);
    }

    // What stands here is worked out by the compiler.
    fn visit_pat(&mut self, _: &'ast Pat) {}
    fn visit_type(&mut self, _: &'ast syn::Type) {}
    fn visit_attribute(&mut self, _: &'ast Attribute) {}
    fn visit_item_const(&mut self, _: &'ast syn::ItemConst) {}
    fn visit_item_static(&mut self, _: &'ast syn::ItemStatic) {}
    fn visit_item_enum(&mut self, _: &'ast syn::ItemEnum) {}
    fn visit_expr_const(&mut self, _: &'ast syn::ExprConst) {}
}

impl Finder<'_> {
    fn method(&mut self, item: &ImplItemFn, of_trait: bool) {
        if !is_left_out(&item.attrs) {
            self.function(&item.sig, &item.block, of_trait);
        }
    }
}
