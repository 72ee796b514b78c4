// Written by crate/examples/types.rs from the Rust types; do not edit.

/**
 * How a dose of an accelerator lies to its rule.
 */
export type Accelerated = "less" | "more" | "as_wanted" | "over" | "within";

/**
 * What is to be done.
 */
export type Act = "call_poison_centre" | "go_on_if" | "weigh_again" | "thin_now" | "throw_out" | "cook_now" | "chill_now" | "throw_out_brine" | "finish_now" | "get_medical_help";

/**
 * After the fire, by the weight of all pieces then.
 */
export type After = { 
/**
 * `78 %` of the green weight.
 */
share: string, 
/**
 * Salt in per cent of what it weighs now; nothing where the method does not say how much stays in.
 */
salt: string | null, 
/**
 * Salt in per cent of salt and water.
 */
brine: string | null, 
/**
 * Water activity, an estimate.
 */
activity: string | null, 
/**
 * What it is worked from beside the recipe's salt: water in lean meat, in per cent (usual, from memory). All that was
 * lost is taken as water. An estimate, not a measurement: it says nothing of whether it keeps.
 */
water: string, };

/**
 * What fires told of the air of a smoker.
 */
export type AirHabit = { 
/**
 * How much heat it brings, in per cent of what is usual for its kind.
 */
heat: number, 
/**
 * How wide the range of that still is, in per cent of what it was.
 */
range: number, };

/**
 * An allergen.
 */
export type Allergen = { "of": AllergenKey } | { "read": string };

/**
 * An area, rounded to ten of its unit.
 */
export type Area = { 
/**
 * How many.
 */
number: number, 
/**
 * Square centimetres in metric units, square inches in those of the US.
 */
units: System, };

/**
 * A question.
 */
export type Ask = "ate_what" | "by_baby" | "ate_in_range" | "dose_judged" | "how_on" | "on_1h" | "more_meat" | "first_weighed" | "since_1d" | "raw_days" | "power_where" | "out_4h" | "reads_40" | "ice" | "got_40" | "air_90" | "warm_1h" | "warm_2h" | "thaw_fridge" | "thaw_quick" | "froze_where" | "ticked" | "jar" | "cold_all" | "past_5d" | "method" | "lost" | "cure_time_over" | "brine_what" | "brine_meat" | "metal_1h" | "heat_4h" | "past_140_4h" | "middle_140" | "fire_1h" | "cooled_since" | "since_2h" | "at_70_2h" | "at_41_6h" | "pack_eaten" | "vac_days" | "oil_2d";

/**
 * Content of `plan_back`.
 */
export type AskBack = { 
/**
 * Batches that share the places.
 */
batches: Array<Named>, 
/**
 * By when, and what stands in the way.
 */
wish: Wish, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `plan_bag`.
 */
export type AskBag = { 
/**
 * What is in the bag.
 */
rows: Array<BagAsk>, 
/**
 * The recipes it is for: then the answer says what to buy.
 */
recipes?: Array<Recipe>, 
/**
 * Pieces to a pack, for the bags; nothing where no bags are to be counted.
 */
per_pack?: number, 
/**
 * What is in the house.
 */
stock?: Array<Kept>, 
/**
 * Batches of before, for the own weights.
 */
batches?: Array<Batch>, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `brine`.
 */
export type AskBrine = { 
/**
 * Where it stands.
 */
vessel: Vessel, 
/**
 * Green weight of the meat; nothing for a brine alone.
 */
meat?: string | null, 
/**
 * Key of its cut; a belly has limits of its own. Nothing when not said.
 */
cut?: string | null, 
/**
 * How strong it is to be, or reads: a bare number on the scale.
 */
strength: string, 
/**
 * On which scale.
 */
scale: Scale, 
/**
 * For a reading: how warm the brine was; nothing for 60 °F.
 */
at?: string | null, 
/**
 * Sugar in it, per cent of the water.
 */
sugar?: string | null, 
/**
 * The cure; nothing for a brine without.
 */
cure?: BrineCure, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `calendar`.
 */
export type AskCalendar = { 
/**
 * The batches whose jobs go into the file.
 */
batches: Array<Named>, 
/**
 * What the last file of them left in the calendar.
 */
earlier?: Array<[string, number]>, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * Hours slept or away: nothing that can move falls into them.
 */
rests?: Array<Rest>, 
/**
 * Words for what is no job; empty ones stand as keys.
 */
words?: CalendarWords, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `card`.
 */
export type AskCard = { 
/**
 * The recipe.
 */
recipe: Recipe, 
/**
 * Green weight to work it for; nothing for 1 kg.
 */
weight?: string | null, 
/**
 * Pieces to work it for where a line goes by the piece; 1 when not given.
 */
pieces?: number, 
/**
 * Key of the cut it is worked for, or `own`: its cautions go by it; nothing while none is chosen.
 */
cut?: string, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `cure_clock`.
 */
export type AskClock = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * Hours slept or away: nothing that can move falls into them.
 */
rests?: Array<Rest>, 
/**
 * Salt to soak it down to, when it is too salty.
 */
soak_to?: string | null, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `learn_cut`.
 */
export type AskCut = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * Which size class was cut, from 0.
 */
class: number, 
/**
 * What was seen or tasted.
 */
found: Cutting, 
/**
 * The part across the middle that has not coloured.
 */
ring?: string | null, 
/**
 * When it was cut, in milliseconds since 1970.
 */
at: number, };

/**
 * Content of `check_dose`.
 */
export type AskDose = { 
/**
 * How the cure was put on.
 */
method: Method, 
/**
 * Green weight of the meat.
 */
green: string, 
/**
 * For a brine: its water.
 */
water?: string | null, 
/**
 * For a brine: salt, sugar and all else dissolved in it, without the cure.
 */
dissolved?: string | null, 
/**
 * How many weighings that is the sum of; nothing for two, salt and sugar.
 */
weighings?: number | null, 
/**
 * Sodium ascorbate or erythorbate in it, which a pumped belly wants; nothing where there is none.
 */
ascorbate?: string | null, 
/**
 * For a pump or a pick-up: the share of green weight that goes in.
 */
take?: string | null, 
/**
 * Key of the cut; a belly has limits of its own. Nothing when not said.
 */
cut?: string | null, 
/**
 * For a pick-up: the thickest part of the thinnest piece.
 */
thickness?: string | null, 
/**
 * For a pick-up: how long it stays in the brine.
 */
stays?: string | null, 
/**
 * What was put in.
 */
put_in: PutIn, 
/**
 * A second agent beside it.
 */
also?: PutIn, 
/**
 * Whether it is cooked or hangs for months.
 */
eaten?: Eaten, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `draft`.
 */
export type AskDraft = { 
/**
 * Key of the cut, or `own`; nothing while none is chosen.
 */
cut?: string | null, 
/**
 * Green weight; nothing while none is typed.
 */
weight?: string | null, 
/**
 * Nitrite printed on the bag of cure; nothing for the recipe's.
 */
nitrite?: string | null, 
/**
 * The thickest piece; nothing for the usual one of the cut.
 */
thickness?: string | null, 
/**
 * The recipe to weigh by; nothing for a plain rub.
 */
recipe?: Recipe, 
/**
 * What it is called where no recipe is given: the page's name of the cut; empty for the name of the recipe.
 */
called?: string, 
/**
 * Work with a premix.
 */
premix?: boolean, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `fire_log`.
 */
export type AskFire = { 
/**
 * The batch with its log.
 */
batch: Batch, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `labels`.
 */
export type AskLabels = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * True for packs that go into the freezer.
 */
frozen: boolean, 
/**
 * True for vacuum packs.
 */
vacuum: boolean, 
/**
 * Weights of the packs.
 */
packs?: string[], 
/**
 * Hours slept or away: nothing that can move falls into them.
 */
rests?: Array<Rest>, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `larder`.
 */
export type AskLarder = { 
/**
 * Everything that came in.
 */
stock: Array<Kept>, 
/**
 * Batches whose ticks take from it, and whose packs lie there.
 */
batches: Array<Named>, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `ledger`.
 */
export type AskLedger = { 
/**
 * The batches.
 */
batches: Array<Entry>, 
/**
 * Everything that came in: the packs among it.
 */
stock: Array<Kept>, 
/**
 * What a bag weighs that is sought.
 */
weight?: string | null, 
/**
 * The thickest part of what is in it.
 */
thickness?: string | null, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `link`.
 */
export type AskLink = { 
/**
 * The recipe.
 */
recipe: Recipe, 
/**
 * Address of the page, without `#`.
 */
base: string, };

/**
 * The batch that a card is asked about.
 */
export type AskLog = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * Units to answer in.
 */
units: System, };

/**
 * Content of `next`.
 */
export type AskNext = { 
/**
 * Batches under way.
 */
batches: Array<Named>, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * Hours slept or away: nothing that can move falls into them.
 */
rests?: Array<Rest>, 
/**
 * How far east it is: minutes that its clocks are ahead of Greenwich. Nothing where nobody knows.
 */
east?: number, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `open_link`.
 */
export type AskOpen = { 
/**
 * The whole link, or what stands behind its `#`.
 */
text: string, };

/**
 * Content of `pieces`.
 */
export type AskPieces = { 
/**
 * Size classes.
 */
pieces: Array<Piece>, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `read_recipe`.
 */
export type AskReading = { 
/**
 * What was pasted.
 */
text: string, 
/**
 * Answers so far: the key of a question and the value of a choice, or what was typed.
 */
answers: Array<[string, string]>, 
/**
 * What the recipe is called where its text has no title. Where nothing is handed in either, it is called by its tag.
 */
untitled?: string, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `scale`: what it shows for what is known.
 */
export type AskScale = { 
/**
 * A known weight, `100 g`, or water from a syringe or a measuring jug, `50 ml`; and what the scale shows.
 */
checks: [string, string][], 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `spoon`: level spoons that were weighed.
 */
export type AskSpoon = { 
/**
 * Key in the pantry of what was in them.
 */
item: string, 
/**
 * True for a tablespoon.
 */
tablespoon: boolean, 
/**
 * Weights, one for each spoon, or one for `count` together.
 */
weights: string[], 
/**
 * How many went onto the scale together; nothing where each was weighed.
 */
count?: number | null, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `standing`.
 */
export type AskStanding = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * The time now, in milliseconds since 1970.
 */
now: number, 
/**
 * True for packs that go into the freezer.
 */
frozen?: boolean, 
/**
 * True for vacuum packs.
 */
vacuum?: boolean, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `stock`: cure thinned with salt or with water.
 */
export type AskStock = { 
/**
 * True for a solution in water, false for a premix with salt.
 */
in_water: boolean, 
/**
 * Sodium nitrite printed on the packet.
 */
nitrite: string, 
/**
 * Sodium nitrate printed on it; nothing for none.
 */
nitrate?: string | null, 
/**
 * Ingoing nitrite to aim at.
 */
aim: string, 
/**
 * Green weight it is for.
 */
meat: string, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * Content of `trouble`.
 */
export type AskTrouble = { 
/**
 * Key of the card; empty for the list alone.
 */
card: string, 
/**
 * What was answered: pairs of question and answer. What the card does not ask now is kept and left alone.
 */
chosen: Array<[string, string]>, 
/**
 * The batch it happened to, where that is known: what its log says is not asked.
 */
log?: AskLog, };

/**
 * Content of `turned`.
 */
export type AskTurned = { 
/**
 * The recipe.
 */
recipe: Recipe, 
/**
 * The method it is turned to.
 */
method: Method, };

/**
 * Content of `weigh_out`.
 */
export type AskWeighOut = { 
/**
 * The batch.
 */
batch: Batch, 
/**
 * The user's settings.
 */
settings: Settings, };

/**
 * A question that settles what is ambiguous.
 */
export type Asked = { 
/**
 * Its key, to send back with the answer: what is asked, and behind a colon the line it is about, so that an answer
 * never settles another line.
 */
key: string, 
/**
 * The question.
 */
ask: Question, 
/**
 * Values to send back, with what each stands for.
 */
choices: Array<[string, Offer]>, 
/**
 * True where a weight or a per cent is typed; the choices are then offers.
 */
typed: boolean, 
/**
 * The answer that was given and could be taken.
 */
answer: string | null, 
/**
 * The lines that it settles.
 */
of: Array<string>, };

/**
 * What may be said of a batch.
 */
export type AssuredSheet = { 
/**
 * Its dose is in range.
 */
dose: boolean, 
/**
 * No cure is in it.
 */
no_cure: boolean, 
/**
 * The cure's times hold.
 */
cured: boolean, 
/**
 * Hot enough, class by class.
 */
hot: Array<boolean>, 
/**
 * To be taken out, class by class.
 */
pull: Array<boolean>, 
/**
 * Chilled in time, class by class.
 */
chilled: Array<boolean>, 
/**
 * All of it is cooked.
 */
cooked: boolean, 
/**
 * How long it keeps, in milliseconds since 1970.
 */
use_by: number | null, 
/**
 * It may be given.
 */
gift: boolean, 
/**
 * The next job may be done.
 */
go_on: boolean, };

/**
 * The plan over all batches.
 */
export type Back = { 
/**
 * True when every batch that is planned is ready in time.
 */
fits: boolean, 
/**
 * The first start of all: later than this not everything is ready.
 */
start: number | null, 
/**
 * When the last batch would be ready if all were begun now.
 */
finish: number | null, 
/**
 * How much better a plan there may be, where not every one was looked at.
 */
gap: Gap | null, 
/**
 * One for each batch, in the order of the request.
 */
batches: Array<BackBatch>, };

/**
 * The plan of one batch.
 */
export type BackBatch = { 
/**
 * The batch's id as it came with the request.
 */
batch: string, 
/**
 * True when it is ready in time.
 */
fits: boolean, 
/**
 * The latest start; nothing for one that runs already.
 */
start: number | null, 
/**
 * The earliest it can be ready beside the others.
 */
finish: number | null, 
/**
 * Time to spare, `14 h`; nothing where there is none.
 */
slack: string | null, 
/**
 * Why it is not planned, or why it does not fit.
 */
snag: Snag | null, 
/**
 * What would make it fit.
 */
ways: Array<WouldFit>, 
/**
 * Its tasks: at the latest where it fits, at the earliest where it does not.
 */
steps: Array<BackStep>, };

/**
 * One task.
 */
export type BackStep = { 
/**
 * Index of the step; the number of steps for the end. A turn has that of its step.
 */
step: number, 
/**
 * What it is. A turn only goes along.
 */
task: Task, 
/**
 * When it begins.
 */
at: number, 
/**
 * When the next task begins.
 */
ends: number, 
/**
 * Number of the place it takes: 0 the refrigerator, 1 the smoker or oven, 2 the rack.
 */
place: number | null, 
/**
 * True where somebody has to be by all the while.
 */
tended: boolean, 
/**
 * Why it must not move; nothing where it may.
 */
fixed: Fixed | null, 
/**
 * Where it was due before it made way for rest.
 */
moved: number | null, };

/**
 * One species, or one animal.
 */
export type BagAsk = { 
/**
 * Key of a row of the table of game.
 */
of: string, 
/**
 * What the page calls that row: pieces of before of that name are of it.
 */
called?: string, 
/**
 * Hunters, 1 for what is there already.
 */
hunters: number, 
/**
 * Birds or animals for each.
 */
each: number, 
/**
 * `each` counts pieces, not animals: one haunch of a deer that was shared.
 */
by_piece?: boolean, 
/**
 * Weight of one animal as the row weighs it; nothing for what is usual.
 */
weight?: string | null, 
/**
 * Index of its recipe; nothing where it is for none yet.
 */
recipe?: number | null, };

/**
 * Where a figure comes from.
 */
export type BagBasis = { "is": "own", 
/**
 * How many pieces those were.
 */
pieces: number, } | { "is": "table", 
/**
 * Where it is from.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * One thing for one bag.
 */
export type BagLine = { 
/**
 * Id of its line on the list of all: `cure:0`, `line:2`.
 */
id: string, 
/**
 * What to add.
 */
add: Figure, 
/**
 * What the scale shows after it; nothing for what is weighed apart.
 */
reads: Figure | null, };

/**
 * What goes into one bag.
 */
export type BagList = { 
/**
 * The bag.
 */
bag: number, 
/**
 * Places of its size classes in the batch.
 */
classes: Array<number>, 
/**
 * Its green weight.
 */
green: Figure, 
/**
 * What is weighed for it on one zeroing of the scale, and what the scale shows after each.
 */
bowl: Array<BagLine>, 
/**
 * Water and all else in a vessel of its own.
 */
vessel: Array<BagLine>, 
/**
 * The dose that it comes to.
 */
nitrite: Ppm | null, 
/**
 * How that is judged, on this scale.
 */
outcome: Outcome, };

/**
 * One row of the plan.
 */
export type BagRow = { 
/**
 * Key of its row in the table of game.
 */
game: GameKey, 
/**
 * Key of its cut, or `own`.
 */
cut: CutKey | 'own', 
/**
 * Pieces.
 */
pieces: number, 
/**
 * Grams of one piece, with both ends.
 */
each: Spread, 
/**
 * Green weight of all, with both ends.
 */
all: Spread, 
/**
 * Where the figures come from, with their status.
 */
basis: BagBasis, };

/**
 * The plan of a bag.
 */
export type BagSheet = { 
/**
 * One for each row asked about, in order.
 */
rows: Array<BagRow>, 
/**
 * Pieces in all.
 */
pieces: number, 
/**
 * Green weight in all, typical.
 */
green: string, 
/**
 * The same with both ends.
 */
range: Spread, 
/**
 * What to buy for the recipes: enough for the high end.
 */
buy: Array<Buy>, 
/**
 * What is left at the end of each recipe, with its source.
 */
left: Array<LeftOf>, 
/**
 * Room on a rack or a shelf.
 */
room: RackRoom | null, 
/**
 * Whether the refrigerator and the smoker have it, where the settings know them.
 */
places: Array<HouseRoom>, 
/**
 * Cautions that stand beside it.
 */
cautions: Array<Caution>, };

/**
 * What a time rests on.
 */
export type Basis = "published" | "recipe" | "usual" | "forecast";

/**
 * One batch, from the board to the label.
 */
export type Batch = { 
/**
 * Two capital letters and, where two batches share them, a number: `SD`, `SD2`.
 */
tag: string, 
/**
 * What it is called.
 */
name: string, 
/**
 * The recipe as it was when the batch began; later changes to the recipe do not reach it.
 */
recipe: Recipe, 
/**
 * Size classes.
 */
pieces: Array<Piece>, 
/**
 * The day of the kill, `2026-11-14`. Empty when not known.
 */
killed?: string, 
/**
 * Work with a one-in-so-many premix in place of the neat cure.
 */
premix: boolean, 
/**
 * What went in as cure when it was not the weigh-out: a spoon, another weight.
 */
put_in?: PutIn, 
/**
 * A second agent that went in beside it.
 */
also?: PutIn, 
/**
 * Everything ticked, with its time.
 */
ticks: Array<Tick>, 
/**
 * The log of the fire and the chill, once it is begun.
 */
fire?: Fire, 
/**
 * What the refrigerator did while it cured.
 */
fridge?: Array<FridgeReading>, 
/**
 * By which time it comes out of the cure, where the recipe's and the clock's differ and somebody has said.
 */
by?: By, 
/**
 * When it was thrown out, in milliseconds since 1970: nothing is assured of it any more.
 */
thrown_out?: number, 
/**
 * Put away: finished or thrown out.
 */
closed: boolean, 
/**
 * Remarks.
 */
notes?: string, 
/**
 * What came out of it, for next time.
 */
after?: CameOut, };

/**
 * A belly by its rind.
 */
export type Belly = "no" | "bare" | "rind_on";

/**
 * What is to be known of the recipe that comes out.
 */
export type Beside = "cure_by_weight" | "notes" | "no_heat";

/**
 * What is written onto a paper by hand.
 */
export type Blank = "birds" | "hunter" | "signature" | "from" | "given_to";

/**
 * A weight as it stands in one box or in two.
 */
export type BothWays = { 
/**
 * Grams, `3175`.
 */
grams: string, 
/**
 * Whole pounds, `7`.
 */
pounds: string, 
/**
 * The ounces beside them, `0.5`.
 */
ounces: string, };

/**
 * How much it is.
 */
export type BrineAmounts = { 
/**
 * Litres of water.
 */
litres: string, 
/**
 * US gallons of water.
 */
us_gallons: string, 
/**
 * Imperial gallons of water.
 */
imperial_gallons: string, 
/**
 * All of the brine, by weight.
 */
brine: string, };

/**
 * Cure for a brine, either way round.
 */
export type BrineCure = { 
/**
 * Sodium nitrite printed on the packet.
 */
nitrite: string, 
/**
 * Sodium nitrate printed on it; nothing for none.
 */
nitrate?: string | null, 
/**
 * Ingoing nitrite to aim at (nitrate, where the packet has no nitrite); nothing where `weight` is judged.
 */
aim?: string | null, 
/**
 * Cure to be judged.
 */
weight?: string | null, };

/**
 * A strength in one measure.
 */
export type BrineMeasure = { 
/**
 * The measure.
 */
scale: Scale, 
/**
 * The number in it, without its unit: `26.40`.
 */
number: string, };

/**
 * What to mind at the bench.
 */
export type BrineRemark = "reads_sugar" | "which_gallon" | "bag_is_half" | "wants_meat" | "scale_too_coarse";

/**
 * The answer of the bench.
 */
export type BrineSheet = { 
/**
 * Water to take.
 */
water: Figure, 
/**
 * Salt to weigh, less what the cure brings.
 */
salt: Figure, 
/**
 * Sugar to weigh.
 */
sugar: Figure | null, 
/**
 * Cure to weigh.
 */
cure: Figure | null, 
/**
 * The strength in every measure.
 */
strength: Array<BrineMeasure>, 
/**
 * The water in every measure, and the brine.
 */
amounts: BrineAmounts, 
/**
 * The salt once meat and brine are equal; nothing without meat.
 */
even: EvenSalt | null, 
/**
 * What to mind.
 */
remarks: Array<BrineRemark>, 
/**
 * The verdict on the cure, over meat and brine together.
 */
verdict: Verdict | null, };

/**
 * One thing to buy.
 */
export type Buy = { 
/**
 * What it is called; nothing for bags.
 */
of: ItemName | null, 
/**
 * How much of it.
 */
wanted: Wanted, 
/**
 * Enough for the high end.
 */
most: string, 
/**
 * What is in the house; nothing where none of it is written down.
 */
has: InHouse | null, };

/**
 * Whose time a batch goes by in its cure.
 */
export type By = "clock" | "recipe";

/**
 * A calendar file.
 */
export type Calendar = { 
/**
 * The file, `text/calendar`, lines ended by CR LF.
 */
text: string, 
/**
 * Jobs to come that are in it.
 */
jobs: number, 
/**
 * Jobs of an earlier file that are taken off.
 */
cancelled: number, 
/**
 * What is in the calendar now, for the next file.
 */
sent: Array<[string, number]>, };

/**
 * Words of the page for what stands in the file; where one is empty, its key stands.
 */
export type CalendarWords = { 
/**
 * The mark of a chill after two hours.
 */
two_hours: string, 
/**
 * When it has to be cold.
 */
cold: string, 
/**
 * When the batch is ready.
 */
ready: string, 
/**
 * Before a job that is done.
 */
done: string, 
/**
 * In place of what is no longer to do.
 */
gone: string, 
/**
 * The jobs.
 */
jobs: Array<JobWords>, };

/**
 * What came out of a batch.
 */
export type CameOut = { 
/**
 * Weight of what was packed.
 */
out?: string | null, 
/**
 * How the cut looked.
 */
cut?: string, 
/**
 * The taste in three words.
 */
taste?: string, 
/**
 * What to change next time.
 */
change?: string, };

/**
 * What raw meat keeps.
 */
export type Capped = { 
/**
 * The last moment in the cure.
 */
last: number, 
/**
 * When it would have come out.
 */
wants: number, 
/**
 * Where the figure is from.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * A card: what went wrong.
 */
export type Card = "eaten" | "dose" | "power" | "warm" | "thaw" | "froze" | "forgot" | "sat" | "leak" | "brine" | "stall" | "fire" | "early" | "slow_cool" | "pack" | "vacuum" | "oil";

/**
 * One line of a card.
 */
export type CardRow = { 
/**
 * What it is called; nothing for a cure.
 */
item: ItemName | null, 
/**
 * Which cure it is.
 */
cure: CureOf | null, 
/**
 * Its share: `2.2 %`, `0.5 g`.
 */
share: string, 
/**
 * What the share is of.
 */
of: ShareOf, 
/**
 * What a cure aims at; nothing of any other line.
 */
aim: string | null, 
/**
 * Its share is with the salt that is in the cure, its weight without.
 */
with_cure: boolean, 
/**
 * Weight for the card's green weight, on the user's scale.
 */
amount: Figure, };

/**
 * A caution that stands beside a figure.
 */
export type Caution = { 
/**
 * Stable key, such as `nitrite-locked`; the page has its words.
 */
key: CautionKey, 
/**
 * Where it comes from, with its status.
 */
source: string, };

/**
 * A line was ticked, and the list now asks for something else.
 */
export type Changed = { 
/**
 * What is in the bowl.
 */
is: Figure, 
/**
 * What the list asks for.
 */
wanted: Figure, };

/**
 * A record that can be used.
 */
export type Checked = { 
/**
 * Always true; what is wrong comes as problems.
 */
good: boolean, };

/**
 * How the chill stands: one option that holds to its end is enough.
 */
export type Chill = { "is": "not_begun" } | { "is": "running", 
/**
 * The stage it is in has to be read as done by then.
 */
until: number, } | { "is": "done", 
/**
 * When it was read cold.
 */
at: number, } | { "is": "late", 
/**
 * The stage that is over took so many minutes at least.
 */
minutes: number, 
/**
 * And might have taken so many.
 */
most: number, } | { "is": "unwatched", 
/**
 * The stage that is over may have taken so many minutes.
 */
minutes: number, 
/**
 * And might have taken so many.
 */
most: number, };

/**
 * What must hold of a stage of a chill beside its figures.
 */
export type ChillAlso = { "is": "in_all", 
/**
 * So long.
 */
within: string, 
/**
 * From here.
 */
from: Figure, 
/**
 * To here.
 */
to: Figure, } | { "is": "continuous" } | { "is": "soon", 
/**
 * Within so many minutes.
 */
minutes: number, } | { "is": "no_pause" } | { "is": "outer_limit" } | { "is": "withdrawn" } | { "is": "no_linger", 
/**
 * The warmer.
 */
from: Figure, 
/**
 * The colder.
 */
to: Figure, 
/**
 * For longer than this.
 */
over: string, };

/**
 * A stage of an option for chilling.
 */
export type ChillRow = { 
/**
 * The stage as it is published.
 */
stage: ChillStage, 
/**
 * Where it stands.
 */
left: StageLeft, 
/**
 * Where nobody saw it: minutes from its start to its end in a refrigerator at 3 °C, alone on its shelf, by the model. A
 * likely figure, never an assurance.
 */
by_model: number | null, 
/**
 * By how much a thermometer of a home may be off either way. What is read is judged as it is read.
 */
may_be_off: Figure, 
/**
 * When its time ends; nothing while it has not begun or when it is done.
 */
until: number | null, 
/**
 * When it should get there in a refrigerator at 3 °C, alone on its shelf, by the model; only while it runs.
 */
expected: number | null, };

/**
 * A stage of an option for chilling, as it is published.
 */
export type ChillStage = { 
/**
 * The option.
 */
of: Cooling, 
/**
 * It begins when it falls below this.
 */
start: Figure, 
/**
 * And ends at this.
 */
end: Figure, 
/**
 * Most time for it.
 */
within: string | null, 
/**
 * Least nitrite that went in, ppm.
 */
nitrite: number | null, 
/**
 * Least erythorbate or ascorbate that went in, ppm.
 */
erythorbate: number | null, 
/**
 * Least salt in the water, per cent.
 */
brine: string | null, 
/**
 * Most water activity.
 */
activity: string | null, 
/**
 * What else must hold.
 */
also: ChillAlso | null, 
/**
 * Where it is published.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * An answer to a question.
 */
export type Choice = "cure" | "cured_meat" | "unsure" | "no" | "yes" | "too_much" | "too_little" | "rubbed" | "inside" | "under_1h" | "over_1h" | "under_1d" | "over_1d" | "within" | "longer" | "fridge" | "freezer" | "under_4h" | "over_4h" | "cold" | "warm" | "under_2h" | "over_2h" | "in_fridge" | "other" | "water_or_microwave" | "in_the_room" | "in_cure" | "out_of_cure" | "lighter" | "same" | "up_to_5d" | "over_5d" | "weighed" | "strong_brine" | "spoonful" | "more" | "used_brine" | "metal_tub" | "up_to_10d" | "over_10d" | "up_to_2d" | "over_2d";

/**
 * A size class.
 */
export type Class = { 
/**
 * Its place in the batch.
 */
at: number, 
/**
 * How many of what.
 */
of: Counted, 
/**
 * `26 mm`.
 */
thickness: string, 
/**
 * Colour at the centre; nothing where there is no cure.
 */
colour: Span3 | null, 
/**
 * Salt at the centre within a tenth of the final.
 */
even: Span3, 
/**
 * When it came out before the others.
 */
out: number | null, 
/**
 * How far its middle has come by now.
 */
state: Middle, 
/**
 * Shape beside the word.
 */
mark: Mark, 
/**
 * From one surface to the other.
 */
profile: Array<Point>, 
/**
 * What the salt comes to, per cent of the meat; nothing where the recipe does not say.
 */
goal: string | null, 
/**
 * Rules of thumb, and what the clock says of each.
 */
rules: Array<Rule>, 
/**
 * Soaking, when it was asked for and is needed.
 */
soak: Soak | null, };

/**
 * What the log shows of one size class.
 */
export type ClassRecord = { 
/**
 * Its place in the batch.
 */
place: number, 
/**
 * What has to be read.
 */
needed: Needed, 
/**
 * How far it is cooked.
 */
heat: Heat, 
/**
 * What was read of its coldest piece in the end, over the fire or while it rose after it.
 */
read: string | null, 
/**
 * The part of the table's time that it earned, in ten-thousandths and rounded down, where a table may stand in.
 */
credit: number | null, 
/**
 * How it came up.
 */
come_up: ComeUp, 
/**
 * When it was taken out.
 */
pulled: number | null, 
/**
 * Partly cooked: it was over the fire, that ended at this time, and it is not hot enough.
 */
partly: number | null, 
/**
 * Since when it is no longer to be finished: partly cooked it was read cold, or it stood two hours.
 */
abandoned: number | null, 
/**
 * How the chill stands.
 */
chill: Chill, 
/**
 * What a keeping time is counted from: when it was taken out.
 */
heat_ended: number | null, };

/**
 * When a size class comes out.
 */
export type ClassUntil = { 
/**
 * Its place in the batch.
 */
class: number, 
/**
 * How many of what.
 */
of: Counted, 
/**
 * One in ten is through by then: nothing is looked at sooner.
 */
from: number, 
/**
 * Nine in ten are through: it comes out.
 */
until: number, 
/**
 * It is ready so long before the rest that it is worth a way.
 */
first: boolean, 
/**
 * Raw meat does not keep so long.
 */
capped: Capped | null, };

/**
 * What would clear a doubt.
 */
export type Clears = "nothing" | "next_time" | "eat_soon" | "change_recipe" | "weigh_pieces" | "say_cure" | "read_packet" | "mend_dose" | "read_cold" | "answer_cold" | "say_cold" | "cool_now" | "thaw" | "rinse" | "take_out" | "cook_through" | "correct_time" | "answer_reading" | "read_hot" | "finish_now" | "chill";

/**
 * The scale is too coarse for this dose.
 */
export type Coarse = { 
/**
 * The least cure of the list: `3.55 g`.
 */
cure: string, 
/**
 * The scale's step.
 */
step: string, 
/**
 * What range the scale would give, in ppm, rounded outward.
 */
low: number, 
/**
 * See `low`.
 */
high: number, 
/**
 * Ways out, the first first.
 */
ways: Array<CoarseWay>, 
/**
 * One part of cure in so many, where the list can be worked with a premix on this scale.
 */
premix_parts: number | null, 
/**
 * The range a premix would give, in ppm, where it helps.
 */
premix_range: [number, number] | null, };

/**
 * A way out where the scale is too coarse.
 */
export type CoarseWay = { "is": "premix", 
/**
 * The dose then lies between this,
 */
low: number, 
/**
 * and this, in ppm.
 */
high: number, } | { "is": "finer_scale" } | { "is": "pool", 
/**
 * The least cure that this scale weighs well enough.
 */
from: Figure, };

/**
 * Stable codes of [`Problem`].
 */
export type Code = "missing" | "not_read" | "ambiguous_number" | "no_unit" | "wrong_unit" | "too_small" | "too_large" | "conflict" | "unknown" | "too_long" | "bad_form" | "cut" | "altered" | "version";

/**
 * A reading in question; no time goes by it.
 */
export type ColdAsked = { 
/**
 * Its place in the list of readings.
 */
reading: number, 
/**
 * What was typed.
 */
reads: string, 
/**
 * What may have been meant, to choose from: two at the most.
 */
choices: Array<string>, };

/**
 * The way up, in minutes.
 */
export type ComeUp = { "is": "not_begun" } | { "is": "running", 
/**
 * So long by now.
 */
minutes: number, 
/**
 * And so long at most.
 */
most: number, } | { "is": "fine", 
/**
 * It took so long.
 */
minutes: number, 
/**
 * And might have taken so long.
 */
most: number, } | { "is": "slow", 
/**
 * It took so long, up to now or to when it was hot or taken out.
 */
minutes: number, 
/**
 * And might have taken so long.
 */
most: number, } | { "is": "unseen", 
/**
 * What was read first.
 */
first: string, };

/**
 * On what conditions a table gives credit: a plant's, for moist cooking (90 % humidity for an hour or a quarter of the
 * cook, or a sealed or steamed oven). The lowest reading of the coldest piece counts, and nothing below the table's floor.
 */
export type Conditions = { 
/**
 * So much less than was read, for the thermometer.
 */
less: Degrees, 
/**
 * Minutes between readings above which nothing counts.
 */
gap: number, 
/**
 * Below this one study found its rows short (`McMinn` 2018, published).
 */
short_below: Degrees, };

/**
 * An option for chilling: the keys of `tables/cooling.csv`.
 */
export type Cooling = "food_code" | "option1" | "option2" | "cured2021" | "cured1999" | "salty_a" | "salty_b" | "salty_c";

/**
 * How many of what: 8 mallard breasts.
 */
export type Counted = { 
/**
 * How many.
 */
count: number, 
/**
 * Nobody counted them.
 */
about: boolean, 
/**
 * What they are called.
 */
of: PieceName, };

/**
 * What a dose is counted on.
 */
export type CountedOn = { "is": "meat", 
/**
 * Green weight.
 */
green: string, } | { "is": "brine", 
/**
 * What it weighs.
 */
brine: string, 
/**
 * The share, per cent of green weight.
 */
percent: string, } | { "is": "pumped", 
/**
 * Green weight.
 */
green: string, 
/**
 * What the brine weighs.
 */
brine: string, 
/**
 * The share, per cent of green weight.
 */
percent: string, } | { "is": "both", 
/**
 * Green weight.
 */
green: string, 
/**
 * What both weigh together.
 */
all: string, };

/**
 * How the smoker is set up.
 */
export type Cover = "dry" | "pan" | "wrapped";

/**
 * Credit for time at temperature.
 */
export type Credit = { 
/**
 * `4.1`.
 */
num: string, 
/**
 * `7.0`.
 */
of: string, 
/**
 * Tenths of a log earned, for the picture.
 */
tenths: number, 
/**
 * Which table, with its source and status.
 */
table: Table, 
/**
 * On what conditions it holds.
 */
conditions: Conditions, };

/**
 * A curing agent.
 */
export type Cure = { 
/**
 * Key in the pantry, such as `cure-1`.
 */
item: string, 
/**
 * Sodium nitrite printed on the packet, `6.25 %`.
 */
nitrite: string, 
/**
 * Sodium nitrate printed on the packet, `0 %`. The rest counts as salt.
 */
nitrate: string, 
/**
 * Ingoing nitrite to aim at (nitrate, where the agent holds no nitrite), `150 ppm`.
 */
aim: string, 
/**
 * How it was made, for a premix or a stock of the user's own; its two percentages are those of the mix then.
 */
made?: Made, 
/**
 * The aim is a proposal: where the chosen rule has no room for it, the list is weighed for one that it has. Of a
 * recipe that comes with the page; what a person types is judged as it stands.
 */
follows?: boolean, };

/**
 * What a cure is measured as.
 */
export type CureAs = "cure" | "premix" | "stock";

/**
 * The clock of a batch.
 */
export type CureClock = { 
/**
 * When the cure went on; nothing: no clock yet.
 */
begun: number | null, 
/**
 * When it is to come out by the recipe.
 */
planned: number | null, 
/**
 * When it came out.
 */
ended: number | null, 
/**
 * When it comes out of the cure; before the cure is on, as if it went on now. Nothing where there is no stay.
 * The course of the batch fills it in.
 */
until: Until | null, 
/**
 * Readings of the refrigerator that it can hardly have: to be asked about.
 */
asked: Array<ColdAsked>, 
/**
 * What is to be said of the whole: refrigerator, date, order.
 */
notes: Array<Note>, 
/**
 * One for each size class with a clock, in the order of the batch.
 */
classes: Array<Class>, 
/**
 * What cuts have taught, one for each kind of meat in the batch.
 */
learnt: Array<Learnt>, };

/**
 * What a cure on the list is.
 */
export type CureOf = { "is": "neat", 
/**
 * What the bag prints.
 */
strength: Strength, } | { "is": "one_in", 
/**
 * One part of it is cure in so many, the rest salt.
 */
parts: number, } | { "is": "premix", 
/**
 * What its label says.
 */
strength: Strength, } | { "is": "stock", 
/**
 * What its label says.
 */
strength: Strength, };

/**
 * A salt that is not for the taste.
 */
export type CureSalt = "nitrite" | "nitrate";

/**
 * A cut in the table of pieces.
 */
export type Cut = { 
/**
 * Key, `mallard-breast`; the page has its name.
 */
key: CutKey, 
/**
 * Decides cautions and temperatures.
 */
kind: MeatKind, 
/**
 * Whether it is a belly, which some jurisdictions judge by rules of its own.
 */
belly: Belly, 
/**
 * Grams a piece: low, typical, high; nothing where no range is known.
 */
grams: [number, number, number] | null, 
/**
 * Where the range comes from.
 */
source: string, 
/**
 * How well it is known; nothing where no range is.
 */
status: Status | null, 
/**
 * Thousandths of its weight that are bone where it is left in: low, typical, high; nothing where none is in such a cut.
 */
bone: [number, number, number] | null, };

/**
 * Where the usual weight of a cut comes from.
 */
export type CutSource = { "is": "table", 
/**
 * Where it is from.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, } | { "is": "unknown" };

/**
 * What a cut shows.
 */
export type Cutting = "ring" | "even" | "too_salty" | "bland";

/**
 * A danger in a text.
 */
export type Danger = { 
/**
 * What it is.
 */
key: DangerKey, 
/**
 * The text that says it; empty for the whole.
 */
text: string, 
/**
 * Its figure: °F of a temperature, ppm of a dose, hours of a time; nothing where it has none.
 */
figure: string | null, 
/**
 * The figure of the rule, in the same unit.
 */
rule: string | null, };

/**
 * The kinds of danger.
 */
export type DangerKey = "temperature_danger" | "botulism" | "cook_low" | "cure_over" | "cure_under" | "two_agents" | "pure_agent" | "nitrate_present" | "not_cooked" | "parasite" | "cold_smoke" | "cure_unread";

/**
 * What is to be done.
 */
export type Deed = { "is": "say_pieces" } | { "is": "weigh_pieces" } | { "is": "weigh_cure" } | { "is": "weigh_rest" } | { "is": "weigh_salt" } | { "is": "start", 
/**
 * The method.
 */
method: Method, } | { "is": "ask_cure" } | { "is": "into_fridge", 
/**
 * So long it has been on by now, from two hours on: when did it go in?
 */
on: string | null, } | { "is": "step", 
/**
 * The step; without its hours where the clock says how long.
 */
step: Told, } | { "is": "read_fire" } | { "is": "step_of", 
/**
 * Place of the class.
 */
class: number, 
/**
 * The step.
 */
step: Told, } | { "is": "turn", 
/**
 * The method.
 */
method: Method, } | { "is": "take_out", 
/**
 * Place of the class.
 */
class: number, } | { "is": "finish" };

/**
 * A temperature in the person's scale, and in the other one.
 */
export type Degrees = { 
/**
 * In the scale of the settings.
 */
own: string, 
/**
 * In the other.
 */
other: string, };

/**
 * What asks for a temperature.
 */
export type Demand = "consumer" | "choice" | "jerky" | "recipe";

/**
 * What a step does.
 */
export type Do = "cure" | "rinse" | "soak" | "dry" | "smoke" | "cook" | "dry_out" | "rest" | "chill" | "pack";

/**
 * One thing that is said beside the word.
 */
export type DoseRemark = { "is": "nothing_holds" } | { "is": "estimate" } | { "is": "goes_in", 
/**
 * Each portion of cure.
 */
portions: Array<Measured>, 
/**
 * What it is counted on.
 */
on: CountedOn, 
/**
 * True where only the list asks for it, it is too much, and none of it is on the meat yet.
 */
only_asked: boolean, } | { "is": "nitrate_raw_only" } | { "is": "nitrate_forbidden" } | { "is": "pure_salt", 
/**
 * Per cent.
 */
nitrite: string, } | { "is": "strength_unknown" } | { "is": "nitrate_alone" } | { "is": "ascorbate_lacks", 
/**
 * What the rule wants.
 */
ppm: number, } | { "is": "nitrate_no_figure" } | { "is": "finished_decides", 
/**
 * Its limit, ppm.
 */
limit: number, } | { "is": "scale_step", 
/**
 * Grams.
 */
step: string, 
/**
 * The dose, ppm.
 */
range: PpmEnds, } | { "is": "pick_up", 
/**
 * Share of green weight that is taken up, per cent.
 */
percent: string, 
/**
 * The dose by pick-up.
 */
taken: PpmEnds, 
/**
 * The dose when meat and brine are equal.
 */
equal: PpmEnds, } | { "is": "equal_after", 
/**
 * A time.
 */
time: string, } | { "is": "diffuses", 
/**
 * The dose then.
 */
range: PpmEnds, } | { "is": "surface", 
/**
 * The most, ppm.
 */
most: number, } | { "is": "equal_not_before", 
/**
 * A time.
 */
time: string, } | { "is": "equal_unknown" } | { "is": "slip", 
/**
 * Its key.
 */
key: SlipKey, } | { "is": "may_hold", 
/**
 * Why it may.
 */
why: Why, 
/**
 * What it is called.
 */
name: string, } | { "is": "counted_without", 
/**
 * The dose, ppm.
 */
range: PpmEnds, };

/**
 * One doubt on a batch.
 */
export type Doubt = { 
/**
 * What is in doubt.
 */
kind: Kind, 
/**
 * The stage it arose in; it rides on to every later one.
 */
stage: Stage, 
/**
 * What it does.
 */
weight: Weight, 
/**
 * Place of the size class, where it is one class's.
 */
class: number | null, 
/**
 * Place of the recipe's line, where it is one line's.
 */
line: number | null, 
/**
 * Since when, in milliseconds since 1970, where that is known.
 */
since: number | null, 
/**
 * What would clear it.
 */
clears: Clears, 
/**
 * How long, in minutes.
 */
minutes: number | null, 
/**
 * What was read.
 */
read: Figure | null, 
/**
 * What has to be read.
 */
needed: Figure | null, };

/**
 * A batch that nobody has kept yet.
 */
export type Draft = { 
/**
 * The batch: without pieces while there is no weight.
 */
batch: Batch, 
/**
 * Where the weight is rather another unit.
 */
odd: OddMeat | null, 
/**
 * What a bag of cure usually says, where so little was typed that a comma in the wrong place, which gives ten times the
 * dose, is likelier than such a bag.
 */
bag: Figure | null, 
/**
 * The weight in both ways of weighing, for a change of units.
 */
weight: BothWays | null, 
/**
 * The thickest piece with its neighbours on the way up and down; nothing where it is not known.
 */
thick: Thick | null, 
/**
 * The middle at which the recipe has it cooked, `74 °C`; nothing where it does not say.
 */
cook: Figure | null, };

/**
 * When and how the meat is eaten.
 */
export type Eaten = "cooked" | "hung_for_months";

/**
 * What the book needs of a batch, and no more: a thousand of them are asked about at a key press.
 */
export type Entry = { 
/**
 * The batch's id.
 */
id: string, 
/**
 * Its size classes.
 */
pieces: Array<Piece>, 
/**
 * What came out, where it is noted.
 */
out?: string | null, };

/**
 * The salt once meat and brine are equal, in per cent.
 */
export type EvenSalt = { 
/**
 * Of meat and brine together.
 */
over_all: string, 
/**
 * In the meat, which is what it tastes of: salt goes by water, and takes its share of the meat's.
 */
in_meat: string, 
/**
 * How much water the meat is taken to hold.
 */
water: string, };

/**
 * What the warmth of a power cut means for the meat.
 */
export type Fate = "kept" | "use_now" | "discard";

/**
 * What a field holds.
 */
export type FieldKind = "mass" | "length" | "temperature" | "core" | "time" | "share" | "printed" | "printed_nitrate" | "count" | "amount" | "name" | "tag";

/**
 * A number and its unit, apart, so that a page can set the number large.
 */
export type Figure = { 
/**
 * The number: `1480`, `3 lb 4.2`.
 */
num: string, 
/**
 * Its unit: `g`, `oz`.
 */
unit: string, 
/**
 * Both, as one text: `1480 g`.
 */
text: string, };

/**
 * What one cut told of the speed of salt.
 */
export type Finding = { 
/**
 * The kind of meat.
 */
kind: MeatKind, 
/**
 * When it was cut, in milliseconds since 1970.
 */
at: number, 
/**
 * How the speed lies to `speed`.
 */
is: Lies, 
/**
 * Thousandths of the natural logarithm of the diffusion coefficient at 4 °C in 1e-10 m²/s.
 */
speed: number, };

/**
 * The smoker, who will eat, and every reading. Nothing is ever taken out: what is wrong is struck.
 */
export type Fire = { 
/**
 * A fan moves the air.
 */
fan: boolean, 
/**
 * A water pan stands in it, or the pieces are wrapped, from the start.
 */
cover: Cover, 
/**
 * Someone under 5, old, pregnant or ill will eat it; nothing while it was not asked.
 */
at_risk?: boolean, 
/**
 * Where to pull; nothing for the consumer temperature.
 */
target?: string | null, 
/**
 * How warm its middle is when it will be wrapped; nothing where that is not planned. A tick `wrap:0` says that it was,
 * `pan` that water was put in while it hung.
 */
wrap_at?: string | null, 
/**
 * Weight of all pieces after the fire.
 */
out?: string | null, 
/**
 * Size classes without a probe of their own: the place of each, and of the one whose probe speaks for it.
 */
shares?: Array<[number, number]>, 
/**
 * Readings in the order they were logged.
 */
readings: Array<FireReading>, };

/**
 * What stands beside every figure of the log.
 */
export type FireCaution = "local_code" | "probe_thickest" | "chill_missed";

/**
 * One size class in the fire and the chill.
 */
export type FireClass = { 
/**
 * What it is called.
 */
of: PieceName, 
/**
 * The facts that this is worded from.
 */
record: ClassRecord, 
/**
 * What can be said.
 */
state: FireState, 
/**
 * What was read of it after it was hot enough, and before it came out, where that is colder.
 */
colder: Figure | null, 
/**
 * The consumer temperature, which comes first.
 */
consumer: Figure, 
/**
 * Its rule, with where it is published.
 */
rule: HeatRule, 
/**
 * What has to be read: the strictest of rule, recipe and method.
 */
needed: Figure, 
/**
 * Where to pull: what has to be read, or what was set.
 */
target: Figure, 
/**
 * How long it is held there by the table, where that lies below what has to be read.
 */
hold: string | null, 
/**
 * The same in tenths, for the picture.
 */
line: number, 
/**
 * Credit by a table for time at temperature, where one may be given.
 */
credit: Credit | null, 
/**
 * How long it is between cold and hot, where that is worth a word.
 */
come_up: WayUp | null, 
/**
 * The class whose probe speaks for it while it has no reading of its own: it is not measured.
 */
probe: PieceName | null, 
/**
 * Its last reading.
 */
last: Figure | null, 
/**
 * How many readings that is: within two minutes the coldest counts, and once it is out the warmest.
 */
last_of: number, 
/**
 * Its readings, in order of time.
 */
points: Array<FirePoint>, 
/**
 * When it will be done, while it is not pulled and nothing about it is in question.
 */
outlook: Outlook | null, 
/**
 * Why there is no outlook; nothing where there is one or none is needed.
 */
no_outlook: NoOutlook | null, 
/**
 * Since when it may be pulled: it is at its target, and hot enough.
 */
reached: number | null, 
/**
 * When it was pulled.
 */
pulled: number | null, 
/**
 * When it was wrapped while it hung.
 */
wrapped: number | null, 
/**
 * The options for chilling, once it is pulled.
 */
chill: Array<ChillRow>, };

/**
 * A point of a picture: the user's degrees, in tenths.
 */
export type FirePoint = { 
/**
 * Milliseconds since 1970.
 */
at: number, 
/**
 * Tenths of a degree, °C or °F by the settings.
 */
tenths: number, };

/**
 * One reading.
 */
export type FireReading = { 
/**
 * By which the page knows it again, whatever its place; empty in a record of before it had one.
 */
id?: string, 
/**
 * Place of the size class in the batch; nothing for the cabinet.
 */
class?: number, 
/**
 * What the probe showed: of the coldest piece of the class, in its thickest part.
 */
temperature: string, 
/**
 * When, in milliseconds since 1970-01-01 UTC.
 */
at: number, 
/**
 * Struck out: kept, and not reckoned with.
 */
struck?: boolean, 
/**
 * It was questioned, and the person said that it is right.
 */
sure?: boolean, };

/**
 * A log, class by class.
 */
export type FireSheet = { 
/**
 * In the order of the batch.
 */
classes: Array<FireClass>, 
/**
 * Places of the classes still over the fire, the first to be pulled first.
 */
order: Array<number>, 
/**
 * The cabinet.
 */
cabinet: Array<FirePoint>, 
/**
 * Something was read that is still in its cure by the ticks: no time of the batch goes by that reading.
 */
in_cure: boolean, 
/**
 * Questions about readings; while one stands, its class has no verdict.
 */
doubts: Array<Questioned>, 
/**
 * Yield and salt, once it was weighed after the fire.
 */
after: After | null, 
/**
 * Why that weight cannot be right; nothing where it can.
 */
after_wrong: Problem | null, 
/**
 * What earlier fires told of the smoker.
 */
smoker: Known, 
/**
 * All that is in doubt on the batch, the gravest first.
 */
standing: Array<Doubt>, 
/**
 * What stands beside every figure.
 */
cautions: [FireCaution, FireCaution, FireCaution], 
/**
 * Published tables by which nothing is judged.
 */
published: Array<Published>, };

/**
 * What can be said of a class.
 */
export type FireState = "made_it" | "by_table" | "not_yet" | "colder" | "dried_first" | "cannot_say" | "in_doubt";

/**
 * Why a task must not move against the one before it.
 */
export type Fixed = "runs" | "hot" | "rested" | "wet" | "in_water" | "packed";

/**
 * What a refrigerator did, from a time on until the next of these.
 */
export type FridgeReading = { 
/**
 * By which the page knows it again, whatever its place; empty in a record of before it had one.
 */
id?: string, 
/**
 * When, in milliseconds since 1970-01-01 UTC.
 */
at: number, 
/**
 * What was seen.
 */
what: Seen, 
/**
 * Where the thermometer was.
 */
of?: Thermometer, 
/**
 * What the thermometer said; nothing for what was not read.
 */
reads?: string | null, 
/**
 * It was questioned, and the person said that it is right.
 */
sure?: boolean, };

/**
 * Which pieces a row for freezing is for.
 */
export type Frozen = "to6_in" | "to27_in" | "middle";

/**
 * A row for a picker. The page has its name.
 */
export type GameName = { 
/**
 * Key to ask by.
 */
key: GameKey, 
/**
 * The kind of meat.
 */
kind: MeatKind, 
/**
 * How the animal is weighed, `field_dressed`; empty where no weight is asked for.
 */
weighed: WeighedKey | '', 
/**
 * True where there is no figure without a weight.
 */
needs_weight: boolean, 
/**
 * True for a figure from memory.
 */
memory: boolean, };

/**
 * How much better a plan there may be, where not every one was looked at.
 */
export type Gap = { "is": "later", 
/**
 * By so much at the most.
 */
by: string, } | { "is": "more", 
/**
 * So many more at the most.
 */
batches: number, };

/**
 * One thing found about a dose.
 */
export type Ground = "over" | "may_be_over" | "nitrate_over" | "nitrate_may_be_over" | "nitrate_not_allowed" | "too_little" | "may_be_too_little" | "in_range" | "no_cure" | "strength_unknown" | "strength_lethal" | "not_weighed" | "finished_decides" | "nitrate_alone" | "nitrate_no_figure" | "memory_alone" | "evens_out" | "may_even_out" | "diffuses_in" | "needs_accelerator" | "may_hold_more" | "is_in";

/**
 * What kind of thing it is; decides the order of weighing and what dissolves.
 */
export type Group = "cure" | "salt" | "sugar" | "liquid" | "fat" | "spice";

/**
 * What hurts.
 */
export type Hazard = "nitrite" | "parasites" | "perfringens" | "botulism";

/**
 * How far a class is cooked.
 */
export type Heat = { "is": "unread" } | { "is": "in_question" } | { "is": "not_yet", 
/**
 * What was read.
 */
last: string, } | { "is": "colder", 
/**
 * When it was read hot enough.
 */
reached_at: number, 
/**
 * When it was read colder.
 */
later_at: number, 
/**
 * What was read then.
 */
later: string, } | { "is": "dried_first", 
/**
 * When drying began.
 */
dried_at: number, } | { "is": "hot", 
/**
 * Since when.
 */
at: number, } | { "is": "by_table", 
/**
 * Since when.
 */
at: number, };

/**
 * The rule for what has to be read, which comes first.
 */
export type HeatRule = { 
/**
 * What it is for.
 */
of: MeatKind, 
/**
 * What has to be read of whole pieces.
 */
at: Degrees, 
/**
 * A lower one for farmed whole cuts, where there is one: a choice, never for guests at risk.
 */
choice: Degrees | null, 
/**
 * Minutes it rests before it is cut, with that lower one.
 */
rest: number, 
/**
 * Where it is published: title, number, year.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * What came in of a thing, what went of it, and what is left: nought where more went than came in.
 */
export type Held = { "is": "bags", 
/**
 * How many came in.
 */
came: number, 
/**
 * How many went.
 */
went: number, 
/**
 * How many are left.
 */
left: number, } | { "is": "weighed", 
/**
 * What came in.
 */
came: string, 
/**
 * What went.
 */
went: string, 
/**
 * What is left.
 */
left: string, 
/**
 * Of a cure: how far what is left goes; nothing of anything else, and where more went than came in.
 */
cures: Reach | null, };

/**
 * A step that was put to a time by hand.
 */
export type Hold = { 
/**
 * The batch.
 */
batch: string, 
/**
 * Index of the step; the number of steps for the end.
 */
step: number, 
/**
 * When it is to begin.
 */
at: number, };

/**
 * Whether the packet of a thing names nitrite or nitrate, E 249 to E 252.
 */
export type Holds = "unknown" | "none" | "yes";

/**
 * How much of a bag a place holds.
 */
export type HoldsBag = { "is": "most" } | { "is": "likely" } | { "is": "part", 
/**
 * In so many goes.
 */
goes: number, };

/**
 * Hours and room of the house.
 */
export type House = { 
/**
 * Clock times as `22:30`: asleep from and until, in the blind from and until; empty where there is none. The page
 * makes moments of them, since it knows the time zone.
 */
hours: [string, string, string, string], 
/**
 * Batches at once in the refrigerator, over the fire, on the rack.
 */
room: [number, number, number], 
/**
 * Shelves of the refrigerator and racks of the smoker: where they are known, room goes by area there.
 */
racks: [Racks | null, Racks | null], };

/**
 * A place of the house.
 */
export type HousePlace = "fridge" | "smoker";

/**
 * Whether a place of the house has room for the bag.
 */
export type HouseRoom = { 
/**
 * The place.
 */
place: HousePlace, 
/**
 * What it has.
 */
has: Area, 
/**
 * How much of the bag that is.
 */
holds: HoldsBag, };

/**
 * What is in the house of a thing that is wanted.
 */
export type InHouse = { 
/**
 * What is left of it.
 */
left: string, 
/**
 * What is missing for the high end; nothing where it reaches.
 */
missing: string | null, };

/**
 * One row of the pantry.
 */
export type Ingredient = { 
/**
 * Key, `salt-sea-fine`; the page has its name.
 */
key: IngredientKey, 
/**
 * Number that stands for it in links; never used again for another.
 */
number: number, 
/**
 * What recipes call it, `Fine sea salt` first: to recognise and to search by, never shown.
 */
names: Array<string>, 
/**
 * What kind of thing it is.
 */
group: Group, 
/**
 * What a level teaspoon weighs, where known.
 */
spoon: SpoonWeight | null, 
/**
 * Keys of its allergens.
 */
allergens: AllergenKey[], 
/**
 * Nitrite printed on such a packet, in per cent, to begin with; empty for what is no cure.
 */
nitrite: string, 
/**
 * Nitrate printed on such a packet, in per cent, to begin with; empty for what is no cure.
 */
nitrate: string, 
/**
 * Where the figures come from.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * One ingredient.
 */
export type Inside = { "is": "meat", 
/**
 * What it is of.
 */
of: Meat, } | { "is": "item", 
/**
 * What it is called.
 */
of: ItemName, } | { "is": "cure", 
/**
 * Its key; nothing where only the per cent is known.
 */
item: IngredientKey | null, 
/**
 * What its packet names beside the salt.
 */
salts: Array<CureSalt>, };

/**
 * What a line is called: an ingredient, whose name the page knows, or the user's own word.
 */
export type ItemName = { 
/**
 * Key of the ingredient.
 */
item: IngredientKey | 'own', 
/**
 * The user's own word; empty where there is none.
 */
name: string, };

/**
 * One job.
 */
export type Job = { 
/**
 * The batch's id as it came with the request.
 */
batch: string, 
/**
 * Id for its tick: `step:1`, `turn:0:2`, `draw:0`, `rinse:0` and `dry:0` for a size class that comes out first, `end`; `read` for what is over the fire and unread; `fridge` for what has just gone into its cure; `weigh` for a batch that is not in the cure yet, to be opened.
 */
id: string, 
/**
 * What is to be done.
 */
does: Deed, 
/**
 * Stage it belongs to.
 */
stage: Stage, 
/**
 * When it is due, in milliseconds since 1970; nothing while the batch has no clock yet.
 */
due: number | null, 
/**
 * When it ends if begun when due.
 */
ends: number | null, 
/**
 * True when it is due now or overdue.
 */
now: boolean, 
/**
 * When it was ticked; only in the list of one batch.
 */
ticked: number | null, 
/**
 * True when it was passed over: a later step is ticked.
 */
passed: boolean, 
/**
 * How far off it is, where that is half an hour or more, for a question before it is ticked: `36 h`.
 */
early: string | null, 
/**
 * Keys of the cautions that stand beside it.
 */
cautions: CautionKey[], 
/**
 * The size class it is of; nothing for all that are left.
 */
class: number | null, 
/**
 * What its length rests on.
 */
kind: Basis, 
/**
 * Somebody has to be by all the while.
 */
presence: boolean, };

/**
 * Words for one job.
 */
export type JobWords = { 
/**
 * The id of its batch.
 */
batch: string, 
/**
 * Its own id.
 */
id: string, 
/**
 * What it is called.
 */
head: string, 
/**
 * How it is done, and what to take care of.
 */
text: string, };

/**
 * How it is kept. One temperature for each.
 */
export type KeepWord = "in_cure" | "cold" | "cold_vacuum" | "frozen" | "not_yet" | "do_not_eat";

/**
 * A stored thing under its id.
 */
export type Kept = { 
/**
 * The id.
 */
id: string, 
/**
 * The thing.
 */
stock: Stock, };

/**
 * What a date rests on: the row of the keeping times that decides.
 */
export type KeptBy = { 
/**
 * The key of the row.
 */
row: KeepingKey, 
/**
 * Where it is from.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * What is in doubt.
 */
export type Kind = "thrown_out" | "eaten_raw" | "hanging_unproven" | "recipe_too_warm" | "not_weighed" | "not_reckoned" | "cure_not_in" | "may_be_cure" | "dose_over" | "dose_may_be_over" | "dose_low" | "dose_may_be_low" | "dose_unknown" | "too_warm" | "may_be_too_warm" | "warm" | "cold_unseen" | "cold_in_question" | "power_off" | "frozen" | "not_rinsed" | "in_cure" | "time_in_question" | "over_stayed" | "out_early" | "to_read" | "not_read" | "reading_in_question" | "in_fire" | "not_hot" | "dried_first" | "colder_since" | "partly_cooked" | "partly_abandoned" | "slow_up" | "up_unseen" | "chilling" | "chill_late" | "chill_unread" | "past_keeping" | "dryness_untold";

/**
 * A kind of quantity.
 */
export type KindOf = "weight" | "length" | "temperature" | "time" | "share" | "spoon_or_cup";

/**
 * What is known of the smoker.
 */
export type Known = { 
/**
 * Fires in a smoker set up like this that taught something.
 */
fires: number, 
/**
 * What they say; nothing where there are none.
 */
air: AirHabit | null, 
/**
 * What this fire tells, once a class with readings enough is pulled.
 */
tells: Smoked | null, };

/**
 * Everything to print for a batch.
 */
export type Labels = { 
/**
 * All that is in doubt on the batch.
 */
doubts: Array<Doubt>, 
/**
 * The bag label and the pack label; the gift tag where nothing forbids to give it.
 */
papers: Array<Paper>, 
/**
 * Rules to read before a gift or a vacuum pack, with source and status; not printed.
 */
rules: Array<Caution>, 
/**
 * Weight of all packs, where each is weighed.
 */
out: string | null, 
/**
 * The packs are heavier than their meat can be: to be asked about.
 */
too_heavy: TooHeavy | null, };

/**
 * One thing of the pantry.
 */
export type LarderRow = { 
/**
 * What it is called; nothing for bags.
 */
of: ItemName | null, 
/**
 * Ids of what came in.
 */
ids: Array<string>, 
/**
 * What came in, went and is left.
 */
held: Held, 
/**
 * True where more was ticked than came in: something that came in is not written down.
 */
short: boolean, };

/**
 * The stock screen.
 */
export type LarderSheet = { 
/**
 * One row for each thing of the pantry.
 */
rows: Array<LarderRow>, 
/**
 * Packs that are here, the one to eat first on top.
 */
packs: Array<PackRow>, 
/**
 * Packs that went, the latest on top.
 */
gone: Array<PackRow>, };

/**
 * How long a deed takes, in the person's units.
 */
export type Lasts = { "is": "span", 
/**
 * With its unit.
 */
time: string, } | { "is": "hours", 
/**
 * The least.
 */
from: string, 
/**
 * The most.
 */
to: string, };

/**
 * What cuts have taught of one kind of meat.
 */
export type Learnt = { 
/**
 * The kind.
 */
kind: MeatKind, 
/**
 * How many cuts.
 */
cuts: number, 
/**
 * How fast salt goes into it, of the usual speed: `120 %`.
 */
speed: string, 
/**
 * How wide the range of the times is, of what it was: `54 %`.
 */
range: string, };

/**
 * The book of some batches.
 */
export type Ledger = { 
/**
 * In the order asked; for a bag that is sought only those that may be it, the nearest on top.
 */
rows: Array<LedgerRow>, 
/**
 * Green weight of all that are weighed.
 */
green: string, 
/**
 * What came out of those of which both are known.
 */
out: OutOf | null, };

/**
 * One batch.
 */
export type LedgerRow = { 
/**
 * Its id.
 */
batch: string, 
/**
 * Green weight; nothing before all is weighed.
 */
green: string | null, 
/**
 * What came out.
 */
out: OutOf | null, 
/**
 * Why a bag may be of it, the nearest first.
 */
why: Array<MayBe>, };

/**
 * What is left of a recipe's meat at the end.
 */
export type LeftOf = { 
/**
 * How it was finished: the key of a row of the table of game.
 */
finish: FinishKey, 
/**
 * What is left.
 */
weight: Spread, 
/**
 * Where the figure is from.
 */
source: string, 
/**
 * Its status.
 */
status: Status, };

/**
 * How a speed lies to a figure.
 */
export type Lies = "near" | "above" | "below";

/**
 * One thing to weigh beside the cure.
 */
export type Line = { 
/**
 * Key in the pantry, or `own` for something of the user's with a `name`.
 */
item: string, 
/**
 * The user's own word for it; empty for the pantry's.
 */
name?: string, 
/**
 * Of the user's own: the allergens its packet names, `celery, mustard`, or `none`. Empty: not known.
 */
allergens?: string, 
/**
 * Whether it holds nitrite or nitrate, of what the pantry does not know.
 */
agent?: Holds, 
/**
 * How much.
 */
share: Share, };

/**
 * What is to be known of a clause.
 */
export type LineFlag = { "is": "left", 
/**
 * As they were written.
 */
words: string, } | { "is": "amount_unsaid" } | { "is": "spoon_unknown" } | { "is": "piece_unknown" } | { "is": "unweighable" } | { "is": "one_of_two" } | { "is": "base_twofold" };

/**
 * How the weight of a line came about.
 */
export type LineWhy = { "is": "rounded_down", 
/**
 * From so much: `3.552 g`.
 */
exact: string, } | { "is": "less_in_cure", 
/**
 * Salt in all.
 */
whole: string, 
/**
 * Of it in the cure.
 */
in_cure: string, };

/**
 * A recipe as a link and as a QR code.
 */
export type Link = { 
/**
 * The whole link.
 */
link: string, 
/**
 * What stands behind the `#`.
 */
code: string, 
/**
 * The QR code's side in modules, with no quiet zone; nought where the link is too long for one.
 */
qr_size: number, 
/**
 * The dark modules as an SVG path in module units: `M0 0h7v1h-7z…`.
 */
qr_path: string, };

/**
 * Why a recipe goes into no link, or comes out of none.
 */
export type LinkWrong = { "is": "recipe_too_long" } | { "is": "link_too_long" } | { "is": "link_missing" } | { "is": "link_version" } | { "is": "no_link" } | { "is": "link_cut" } | { "is": "link_altered" } | { "is": "link_holds_no_recipe" } | { "is": "link_ingredient" } | { "is": "link_digits" };

/**
 * What its log says of warmth.
 */
export type LogSaid = { 
/**
 * So long above 40 °F as it was read; nothing where that is no minute.
 */
warm: string | null, 
/**
 * So long more perhaps, which nobody read.
 */
unread: string | null, 
/**
 * Since when, in milliseconds since 1970.
 */
since: number | null, 
/**
 * The warmest that the meat or the refrigerator was read at.
 */
highest: string | null, 
/**
 * It is above 40 °F by the last reading.
 */
now: boolean, };

/**
 * A step over the heat that ends below what has to be read in the middle.
 */
export type LowStep = { 
/**
 * Its place.
 */
step: number, 
/**
 * Where it ends.
 */
until: string, 
/**
 * What has to be read: of the chosen cut, and where none is chosen the least that any kind asks for.
 */
least: string, 
/**
 * Whether a cut is chosen.
 */
known: boolean, };

/**
 * How a premix or a stock was made of a packet's cure.
 */
export type Made = { 
/**
 * One part of the cure in so many, 2 to 100.
 */
parts: number, 
/**
 * Filled up with water: a stock. With salt where not: a premix.
 */
in_water: boolean, 
/**
 * By how much its strength may be off either way, per cent of it.
 */
off: string, };

/**
 * The shape beside the word.
 */
export type Mark = "ok" | "care" | "stop" | "ask";

/**
 * Why a bag may be of a batch: what of it weighs or measures about as much.
 */
export type MayBe = { "is": "one", 
/**
 * Place of the class.
 */
class: number, 
/**
 * What it weighs.
 */
weight: string, } | { "is": "all", 
/**
 * Place of the class.
 */
class: number, 
/**
 * What they weigh.
 */
weight: string, } | { "is": "every", 
/**
 * What they weigh.
 */
weight: string, } | { "is": "pack", 
/**
 * What it weighs.
 */
weight: string, } | { "is": "thick", 
/**
 * Place of the class.
 */
class: number, 
/**
 * Its thickest part.
 */
thickness: string, };

/**
 * Something in a recipe that may be a curing agent.
 */
export type MayHold = { 
/**
 * Why it may.
 */
why: Why, 
/**
 * Its place among the lines; among what was not read where that is why.
 */
at: number, 
/**
 * What it is called, or how it was written.
 */
name: string, };

/**
 * A portion of cure, as it is told.
 */
export type Measured = { 
/**
 * As it was measured, `3.5 g`, `1 tbsp`; empty where no amount is said.
 */
said: string, 
/**
 * What was measured.
 */
of: CureAs, 
/**
 * Grams of cure in it, where it is a mix.
 */
neat: string | null, 
/**
 * Least, usual and most grams, where it was measured by the spoon.
 */
grams: [string, string, string] | null, };

/**
 * Meat by what it is of.
 */
export type Meat = { 
/**
 * Key of the cut.
 */
cut: CutKey | 'own', 
/**
 * The user's own word, where it is none of the cuts.
 */
name: string, 
/**
 * How many; nothing where nobody counted them, and on a pack, which holds a part of them.
 */
count: number | null, };

/**
 * A kind of meat: decides cautions, temperatures and times.
 */
export type MeatKind = "bird" | "red" | "boar" | "hare" | "own";

/**
 * How the cure gets into the meat.
 */
export type Method = "rub" | "cover_brine" | "ground" | "pick_up" | "pumped" | "pumped_and_covered";

/**
 * How far the middle of a size class has come.
 */
export type Middle = "not_yet" | "likely" | "coloured" | "even";

/**
 * Sizes that one time will not do for: the thickest is a quarter thicker than the thinnest, or more.
 */
export type Mixed = { 
/**
 * What the thickest is called.
 */
thick: PieceName, 
/**
 * How thick it is.
 */
thickness: string, 
/**
 * What the thinnest is called.
 */
thin: PieceName, 
/**
 * How thick that is.
 */
thinness: string, };

/**
 * More raw meat for a dose that is over.
 */
export type MoreMeat = { 
/**
 * How much more, in the person's units: to the middle between least and limit.
 */
weight: Figure, 
/**
 * Ingoing nitrite over all of the meat then.
 */
then: Ppm, };

/**
 * A batch with the id it is kept under.
 */
export type Named = { 
/**
 * The id; comes back with every job.
 */
id: string, 
/**
 * The batch.
 */
batch: Batch, };

/**
 * What has to be read before a class is hot enough.
 */
export type Needed = { 
/**
 * This or more.
 */
at: string, 
/**
 * What asks for it, the strictest.
 */
by: Demand, 
/**
 * The consumer temperature of this kind, whoever eats it.
 */
consumer: string, 
/**
 * Minutes it stays before it is cut.
 */
rest: number, 
/**
 * It has to be that hot before it is dried out.
 */
before_drying: boolean, 
/**
 * What the recipe asks for by itself.
 */
recipe: string | null, 
/**
 * The table whose time at temperature may stand in for the consumer temperature.
 */
table: Table | null, 
/**
 * Why none may, and why no lower one may be chosen.
 */
no_lower: NoLower | null, };

/**
 * Jobs over all batches, the soonest first, and the state of each batch.
 */
export type NextList = { 
/**
 * Every job still to do, the soonest first.
 */
jobs: Array<Job>, 
/**
 * One for each batch asked about, in the order of the request.
 */
batches: Array<State>, };

/**
 * One thing to do next.
 */
export type NextStep = { "is": "weigh_pieces" } | { "is": "cover_brine_instead" } | { "is": "say_thickness" } | { "is": "lower_aim", 
/**
 * At this, ppm; nothing where none is sure to do on this scale.
 */
aim: number | null, 
/**
 * Between which the whole range has to lie.
 */
within: PpmEnds, } | { "is": "check_pieces" } | { "is": "finer_scale_or_premix", 
/**
 * The least, ppm.
 */
least: number, } | { "is": "raise_aim", 
/**
 * At this, ppm; nothing where none is sure to do on this scale.
 */
aim: number | null, 
/**
 * Between which the whole range has to lie.
 */
within: PpmEnds, } | { "is": "keep_fresh" } | { "is": "use_it", 
/**
 * The method.
 */
method: Method, } | { "is": "treat_as_fresh", 
/**
 * True where something went in that was taken for a cure: pink salt for the table.
 */
put_in: boolean, } | { "is": "cure_now", 
/**
 * Least grams.
 */
least: string, 
/**
 * Most grams.
 */
most: string, 
/**
 * What went in before, and stays in it.
 */
stays: string, } | { "is": "find_packet" } | { "is": "no_packet" } | { "is": "keep_cold_meanwhile" } | { "is": "read_print_again" } | { "is": "throw_out_pure" } | { "is": "ate_pure" } | { "is": "add_ascorbate", 
/**
 * So much, ppm.
 */
ppm: number, } | { "is": "tell_ascorbate", 
/**
 * So much, ppm.
 */
ppm: number, } | { "is": "fry_gently" } | { "is": "aim_at_limit", 
/**
 * Most nitrite, ppm.
 */
nitrite: number, 
/**
 * Most nitrate, ppm.
 */
nitrate: number, } | { "is": "or_measure" } | { "is": "measure_first" } | { "is": "label_unmeasured" } | { "is": "leave_cure", 
/**
 * The method.
 */
method: Method, } | { "is": "write_on_bag", 
/**
 * What was put in: `1 tsp`.
 */
said: string, } | { "is": "weigh_spoon", 
/**
 * Which.
 */
spoon: SpoonKind, 
/**
 * Least grams in all that are in range.
 */
least: string, 
/**
 * Most grams in all that are in range.
 */
most: string, } | { "is": "do_not_taste" } | { "is": "more_meat", 
/**
 * The method.
 */
method: Method, 
/**
 * How much, in the person's units.
 */
weight: string, 
/**
 * The dose then, ppm.
 */
then: PpmEnds, } | { "is": "more_water", 
/**
 * The method.
 */
method: Method, 
/**
 * How much, in the person's units.
 */
weight: string, 
/**
 * The dose then, ppm.
 */
then: PpmEnds, } | { "is": "narrow_spoon", 
/**
 * Which.
 */
spoon: SpoonKind, } | { "is": "more_cure", 
/**
 * What it was weighed as: so many grams of the bag itself would be ten times too much of a premix.
 */
of: CureAs, 
/**
 * Grams.
 */
grams: string, 
/**
 * The method.
 */
method: Method, } | { "is": "finer_scale" } | { "is": "throw_out", 
/**
 * True where there is a brine to pour away.
 */
brine: boolean, } | { "is": "someone_ate" } | { "is": "may_be_more" } | { "is": "settle", 
/**
 * Why it may.
 */
why: Why, };

/**
 * Why nothing below the consumer temperature is offered.
 */
export type NoLower = "not_asked" | "at_risk" | "minced" | "dried" | "parasites" | "no_table";

/**
 * Why there is no outlook.
 */
export type NoOutlook = "in_question" | "no_thickness" | "no_cabinet";

/**
 * Why there is no recipe.
 */
export type NoRecipe = { "is": "open" } | { "is": "too_far_apart" } | { "is": "strength_unknown", 
/**
 * Its line.
 */
text: string, 
/**
 * What the pantry says of it.
 */
source: string, } | { "is": "amount_unsaid", 
/**
 * Its line.
 */
text: string, } | { "is": "nothing" } | { "is": "wrong", 
/**
 * That rule.
 */
problem: Problem, };

/**
 * Something to be said of the whole batch.
 */
export type Note = { 
/**
 * Shape beside the word.
 */
mark: Mark, 
/**
 * What it is.
 */
what: Noted, };

/**
 * What is noted.
 */
export type Noted = { "is": "too_warm", 
/**
 * So long by the log; nothing where it has only just been read.
 */
warm: string | null, 
/**
 * So long before it at the most, which was not read.
 */
unread: string | null, 
/**
 * So long from the rub until it went into the refrigerator; nothing under two hours, or where it was read cold.
 */
out: string | null, 
/**
 * Two hours or more, perhaps: it is thrown out, unless the meat itself was read colder.
 */
discard: boolean, } | { "is": "stood", 
/**
 * So long.
 */
time: string, } | { "is": "power_off", 
/**
 * So long.
 */
time: string, 
/**
 * The warmest it came to.
 */
highest: string, 
/**
 * So long above 4 °C (40 °F).
 */
warm: string, 
/**
 * What that means.
 */
fate: Fate, 
/**
 * It was not read when the power came back: reckoned for a shut door in a room at 22 °C (72 °F), which keeps
 * cold for about four hours (FoodSafety.gov, quoted). Else a straight line between the readings.
 */
guessed: boolean, } | { "is": "no_reading", 
/**
 * What the times are for.
 */
at: string, } | { "is": "turns_missed", 
/**
 * So many are not.
 */
missed: number, 
/**
 * Of so many that were due.
 */
due: number, } | { "is": "stay_sets_dose" } | { "is": "in_the_middle" } | { "is": "thickness_missing" } | { "is": "longer_than_planned" } | { "is": "came_out_early" } | { "is": "rinse_early", 
/**
 * The class.
 */
of: Counted, 
/**
 * It may be through all the same: half of such pieces are.
 */
perhaps: boolean, 
/**
 * Pieces no thicker than this would be through by then; nothing where the piece itself is no thicker.
 */
cut: string | null, };

/**
 * No content: `{}`.
 */
export type Nothing = Record<symbol, never>;

/**
 * What is odd about a reading.
 */
export type Odd = "to_come" | "earlier" | "boiling" | "above_cabinet" | "fell" | "too_fast" | "cooled_fast";

/**
 * Meat that is rather another unit.
 */
export type OddMeat = "little" | "much";

/**
 * A thickness that is rather another unit.
 */
export type OddThickness = "thin" | "thick";

/**
 * A time in question.
 */
export type OddTime = { 
/**
 * The id of its tick; `killed` for the day of the kill, `fridge` for a reading of the refrigerator.
 */
of: string, 
/**
 * When it is said to have been, in milliseconds since 1970.
 */
at: number, 
/**
 * What is odd about it.
 */
odd: Untimely, 
/**
 * The id of the tick that it comes before, for one that is earlier.
 */
than: string | null, };

/**
 * A weight that is less than half the least that is usual, or more than twice the most.
 */
export type OddWeight = { 
/**
 * What the class is called.
 */
of: PieceName, 
/**
 * What a piece of it weighs.
 */
each: string, 
/**
 * Least and most that are usual.
 */
usual: [string, string], };

/**
 * What can be answered.
 */
export type Offer = { "is": "said", 
/**
 * As it is shown.
 */
text: string, } | { "is": "measure", 
/**
 * Its key in the table of words: `us_cup`.
 */
of: MeasureKey, } | { "is": "row", 
/**
 * That row.
 */
row: RowOf, } | { "is": "method", 
/**
 * That method.
 */
method: Method, } | { "is": "percent_of", 
/**
 * What it is of.
 */
of: PercentOf, } | { "is": "holds_none" } | { "is": "holds", 
/**
 * As it is called.
 */
name: string, } | { "is": "shared", 
/**
 * As it was written.
 */
base: string, } | { "is": "all" } | { "is": "as_read" } | { "is": "not_as_read" } | { "is": "unsure" };

/**
 * A condition on which an act stands.
 */
export type OnlyIf = "no_signs" | "in_range" | "on_the_outside" | "all_over_all" | "to_the_aim" | "once" | "cold" | "no_more_cure" | "no_slow_smoke" | "as_fresh" | "gap_logged" | "frozen_again" | "cold_within_hour" | "cook_through" | "later_cure" | "within_days" | "frozen_once_cooked" | "thawed_cold" | "weighed_now" | "rinsed" | "liquid_back" | "inert_tub" | "not_pitted" | "past_140_in_4h" | "no_wait" | "to_70_in_2h" | "to_41_in_6h" | "at_38_or_frozen" | "opened_to_thaw" | "bag_opened" | "eaten_today" | "oil_by_day_2";

/**
 * A recipe from a link. Ask for its card to see the verdict; it is not saved by opening.
 */
export type Opened = { 
/**
 * The recipe.
 */
recipe: Recipe, };

/**
 * What came out of what went in.
 */
export type OutOf = { 
/**
 * Weight that came out.
 */
weight: string, 
/**
 * Green weight that it came out of; nothing where that is not known.
 */
of: string | null, 
/**
 * The first as a share of the second, to a tenth of a per cent.
 */
share: string | null, };

/**
 * What can be said of a dose.
 */
export type Outcome = "in_range" | "too_little" | "over" | "cannot_tell";

/**
 * When it will be done.
 */
export type Outlook = { 
/**
 * Earliest, likely and latest time, in milliseconds since 1970, four in five between the ends; nothing where it
 * will not get there within a day.
 */
window: [number, number, number] | null, 
/**
 * What it is worked from: how many readings, or what is usual.
 */
from: OutlookBasis, 
/**
 * What to know and what to do: a stall, the hotter oven, the carry-over.
 */
notes: Array<OutlookNote>, 
/**
 * The fire is out: the cabinet falls and the piece no longer warms. The times are as if it were lit now.
 */
fire_out: boolean, 
/**
 * When it is warm enough to be wrapped as planned, in milliseconds; nothing where that is not planned, or done.
 */
wrap: number | null, 
/**
 * Its course from now on.
 */
course: Array<FirePoint>, };

/**
 * What an outlook is worked from.
 */
export type OutlookBasis = { "is": "shared", 
/**
 * How many readings.
 */
readings: number, 
/**
 * That class.
 */
of: PieceName, } | { "is": "hung_with", 
/**
 * That class.
 */
of: PieceName, } | { "is": "fitted", 
/**
 * How many.
 */
readings: number, } | { "is": "usual" };

/**
 * What to know of an outlook, and what to do.
 */
export type OutlookNote = { "is": "too_cold" } | { "is": "stall" } | { "is": "warmer", 
/**
 * So much warmer.
 */
by: Figure, 
/**
 * About so long from now.
 */
takes: string, } | { "is": "oven", 
/**
 * How hot.
 */
at: Degrees, 
/**
 * About so long from now.
 */
takes: string, } | { "is": "no_rise" } | { "is": "rise", 
/**
 * About so far.
 */
by: Figure, } | { "is": "loss", 
/**
 * Per cent of its weight.
 */
percent: number, };

/**
 * A level spoon of the user's own, weighed with one thing in it.
 */
export type OwnSpoon = { 
/**
 * Key in the pantry of what was weighed in it.
 */
item: string, 
/**
 * True for a tablespoon, false for a teaspoon.
 */
tablespoon: boolean, 
/**
 * Least, usual and most of one level spoon.
 */
grams: [string, string, string], };

/**
 * A pack.
 */
export type PackRow = { 
/**
 * Its id.
 */
id: string, 
/**
 * What it is.
 */
name: string, 
/**
 * Its weight; nothing where it is not weighed.
 */
weight: Figure | null, 
/**
 * The id of its batch, where it was put in from its labels.
 */
batch: string, 
/**
 * True in the freezer.
 */
frozen: boolean, 
/**
 * Its use-by.
 */
until: number | null, 
/**
 * True when that day is past.
 */
over: boolean, 
/**
 * What forbids to keep it or to give it, where its batch is known.
 */
doubts: Array<Doubt>, 
/**
 * Its batch is known, and nothing shows that it was cooked: for whom it is not stands where it is given.
 */
raw: boolean, 
/**
 * Who got it.
 */
to: string, 
/**
 * When it went.
 */
gone: number | null, };

/**
 * One label or tag.
 */
export type Paper = { 
/**
 * What it is for.
 */
kind: PaperKind, 
/**
 * Name on top.
 */
head: string, 
/**
 * What is in it.
 */
what: Array<Meat>, 
/**
 * Green weight on a bag; nothing where the weight of a pack is to be written.
 */
weight: string | null, 
/**
 * How it is kept, before the date.
 */
keep: KeepWord, 
/**
 * The date, in milliseconds since 1970; nothing where it has not earned one.
 */
until: number | null, 
/**
 * What the date of a pack rests on; nothing where it has none.
 */
basis: KeptBy | null, 
/**
 * On a bag: what its hour rests on; nothing where there is none.
 */
by: Basis | null, 
/**
 * When it was put in the cure, or packed.
 */
made: number | null, 
/**
 * Cured, cooked, ingredients.
 */
facts: Array<PaperFact>, 
/**
 * Lines to write on, by hand.
 */
blanks: Array<Blank>, 
/**
 * Keys of the cautions at the foot.
 */
foot: CautionKey[], 
/**
 * What holds it or forbids it: it stands on the paper, in place of a date.
 */
doubts: Array<Doubt>, };

/**
 * A fact on a paper.
 */
export type PaperFact = { "is": "species" } | { "is": "killed", 
/**
 * `2026-11-14`; empty where it is not known.
 */
on: string, } | { "is": "no_cure" } | { "is": "cured", 
/**
 * Sodium nitrite, least and most.
 */
nitrite: [number, number] | null, 
/**
 * Sodium nitrate, least and most.
 */
nitrate: [number, number] | null, } | { "is": "cured_weakly" } | { "is": "cure_unknown" } | { "is": "raw" } | { "is": "cooked", 
/**
 * What its coldest piece read.
 */
read: Figure, } | { "is": "cook_to", 
/**
 * What it needs in the middle.
 */
needed: Figure, } | { "is": "not_cooked" } | { "is": "contents", 
/**
 * The ingredients.
 */
inside: Array<Inside>, 
/**
 * Allergens that the recipe names.
 */
allergens: Array<Allergen>, 
/**
 * What is the user's own and whose packet was not read for allergens.
 */
unread: Array<string>, };

/**
 * What a paper is for.
 */
export type PaperKind = "bag" | "pack" | "gift";

/**
 * What a per cent is of.
 */
export type PercentOf = "meat" | "water" | "both" | "salt";

/**
 * A size class: pieces of one species and cut that are alike.
 */
export type Piece = { 
/**
 * By which the page knows it again, whatever its place; empty in a record of before it had one.
 */
id?: string, 
/**
 * Key of a cut in the table, such as `mallard-breast`, or `own`.
 */
cut: string, 
/**
 * The user's own word for it; empty for the table's.
 */
name?: string, 
/**
 * How many pieces, 1 to 10 000.
 */
count: number, 
/**
 * Nobody counted them: `count` is reckoned from the weight and what is usual.
 */
about?: boolean, 
/**
 * Weight of all of them together, or of each. Nothing: not weighed yet.
 */
weight?: string | null, 
/**
 * True when `weight` is of each piece.
 */
each: boolean, 
/**
 * The thickest part.
 */
thickness?: string | null, 
/**
 * Skin or rind is on: salt comes in from one side only. A cut that has its rind on by its name needs no such word.
 */
skin?: boolean, 
/**
 * Its bone is in it and in its weight: the dose is counted over the meat alone.
 */
bone_in?: boolean, 
/**
 * The bag it lies in, where the sizes are bagged apart; nought while all lie in one.
 */
bag?: number, 
/**
 * It was frozen and thawed before the cure.
 */
thawed?: boolean, };

/**
 * What a size class is called: a cut, whose name the page knows, or the cook's own word.
 */
export type PieceName = { 
/**
 * Key of the cut.
 */
cut: CutKey | 'own', 
/**
 * The cook's own word; empty where there is none.
 */
name: string, };

/**
 * One size class.
 */
export type PieceRow = { 
/**
 * What it is called.
 */
of: PieceName, 
/**
 * Pieces.
 */
count: number, 
/**
 * Weight of one, typical where not weighed.
 */
each: Figure, 
/**
 * Weight of all, typical where not weighed.
 */
all: Figure, 
/**
 * Low and high of all where not weighed.
 */
range: [Figure, Figure] | null, 
/**
 * Where that range comes from.
 */
source: CutSource | null, 
/**
 * The thickest part.
 */
thickness: Figure | null, 
/**
 * Where the weight is so far from the usual that a nought or a unit may be wrong.
 */
odd: OddWeight | null, 
/**
 * Where the thickness is.
 */
odd_thickness: OddThickness | null, };

/**
 * The pieces screen.
 */
export type PieceSheet = { 
/**
 * One row for each size class, in order.
 */
rows: Array<PieceRow>, 
/**
 * Pieces in all.
 */
count: number, 
/**
 * Of one size at least nobody counted them.
 */
about: boolean, 
/**
 * Green weight; the typical one when not all is weighed.
 */
green: Figure, 
/**
 * Low and high where some pieces are not weighed yet.
 */
green_range: [Figure, Figure] | null, 
/**
 * True when every class has a weight.
 */
weighed: boolean, 
/**
 * Where thicknesses differ so much that one time will not do for all.
 */
mixed: Mixed | null, 
/**
 * What stands beside the dressing and the cutting up.
 */
cautions: Array<Caution>, };

/**
 * A place in the profile. Shares are per mille of the final value.
 */
export type Point = { 
/**
 * How deep, per mille of the thickness.
 */
at: number, 
/**
 * `0 mm`.
 */
depth: string, 
/**
 * Now, if the meat is slow, likely, fast.
 */
now: [number, number, number], 
/**
 * At the planned rinse, likely.
 */
rinse: number, 
/**
 * `1.2 %` of the meat; of the final value where there is no goal.
 */
now_text: string, 
/**
 * The same at the planned rinse.
 */
rinse_text: string, };

/**
 * A range in ppm, rounded outward to whole ppm for reading.
 */
export type Ppm = { 
/**
 * The least it may be, rounded down.
 */
low: number, 
/**
 * What it usually is, to the nearest.
 */
typical: number, 
/**
 * The most it may be, rounded up.
 */
high: number, 
/**
 * The same three, exact to four decimals: `["145.6797", "147.8041", "149.9307"]`.
 */
exact: [string, string, string], };

/**
 * A range in whole ppm, outward; one figure where both are the same.
 */
export type PpmEnds = { 
/**
 * The least it may be.
 */
low: number, 
/**
 * The most it may be.
 */
high: number, };

/**
 * Cure thinned with salt so that a coarse scale can weigh it.
 */
export type Premix = { 
/**
 * One part cure in so many parts: 10 or 5.
 */
parts: number, 
/**
 * Cure to weigh for making it.
 */
cure: Figure, 
/**
 * Salt to weigh for making it.
 */
salt: Figure, };

/**
 * One thing to put right. Expected failures are answers, not exceptions.
 */
export type Problem = { 
/**
 * Stable word for programs, such as `ambiguous_number`.
 */
code: Code, 
/**
 * Where it is, below the question: `batch.pieces[0].weight`. Empty for the whole.
 */
field: string, 
/**
 * What is wrong, as a fact that the page words; nothing where `message` says it.
 */
wrong?: Wrong, 
/**
 * One or two sentences: the rule, the value, what to type. Empty where `wrong` is told.
 */
message: string, 
/**
 * Readings to choose from when a text can mean more than one thing.
 */
choices?: Array<string>, };

/**
 * A jurisdiction, for a picker.
 */
export type Profile = { 
/**
 * Key, `us-home`; the page has its name.
 */
key: ProfileKey, 
/**
 * Most nitrite by its general rule, ppm as the sodium salt, rounded down.
 */
limit: number, 
/**
 * What its general rule counts and where it is published.
 */
source: string, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * One published table.
 */
export type Published = { 
/**
 * What it is about, how it is taken and where it is published.
 */
about: PublishedAbout, 
/**
 * True where it is for the time after the fire.
 */
cold: boolean, 
/**
 * Its figures.
 */
rows: Array<PublishedRow>, };

/**
 * What a published table is about.
 */
export type PublishedAbout = { "is": "jerky" } | { "is": "vacuum", 
/**
 * Some clostridia grow without air from here on.
 */
grows: Degrees, } | { "is": "plants" } | { "is": "history" } | { "is": "trichinae_heat", 
/**
 * Those are cooked to this everywhere.
 */
cooked: Degrees, } | { "is": "trichinae_frost", 
/**
 * Those are cooked to this everywhere.
 */
cooked: Degrees, };

/**
 * A row of a published table.
 */
export type PublishedRow = { "is": "heat_meat", 
/**
 * This or more.
 */
to: Figure, } | { "is": "heat_birds", 
/**
 * This or more.
 */
to: Figure, } | { "is": "dry", 
/**
 * The colder.
 */
from: Figure, 
/**
 * The warmer.
 */
to: Figure, } | { "is": "activity", 
/**
 * In air (published).
 */
air: string, 
/**
 * Vacuum-packed (from memory).
 */
vacuum: string, } | { "is": "keep_cold", 
/**
 * This or colder.
 */
at: Figure, } | { "is": "keep_frozen" } | { "is": "chill", 
/**
 * Its figures.
 */
stage: ChillStage, } | { "is": "heat", 
/**
 * How warm.
 */
at: Figure, 
/**
 * How long; nothing where it is done at once.
 */
held: string | null, } | { "is": "frost", 
/**
 * How cold.
 */
at: Figure, 
/**
 * Which pieces.
 */
piece: Frozen, 
/**
 * How long.
 */
held: string, };

/**
 * Cure that is already on the meat, in the measure it was put in by.
 */
export type PutIn = { 
/**
 * `1 tbsp`, `2½ tsp` (level) or `3.5 g`.
 */
amount: string, 
/**
 * Sodium nitrite printed on the packet; nothing when not known.
 */
nitrite?: string | null, 
/**
 * Sodium nitrate printed on the packet; nothing for none.
 */
nitrate?: string | null, 
/**
 * How it was made, where it was a premix or a stock of the user's own.
 */
made?: Made, 
/**
 * The step of the scale that weighed it; nothing for the scale of the settings.
 */
step?: string | null, 
/**
 * It went in where the list has a cure ticked, which did not: that tick was a slip. Without this word both count.
 */
instead?: boolean, };

/**
 * How it is told what went in.
 */
export type PutInBy = "packet" | "scale" | "spoons";

/**
 * A question.
 */
export type Question = { "is": "meat", 
/**
 * More than one weight of it stands in the text; else none.
 */
several: boolean, } | { "is": "method" } | { "is": "take" } | { "is": "water" } | { "is": "percent_of" } | { "is": "holds", 
/**
 * As they are called, or the first characters of how they were written.
 */
names: Array<string>, } | { "is": "strength", 
/**
 * The first characters of its line.
 */
of: string, } | { "is": "either" } | { "is": "letter" } | { "is": "measure" } | { "is": "amounts" } | { "is": "grams" } | { "is": "unused", 
/**
 * As they were written.
 */
words: string, } | { "is": "bare" } | { "is": "number" } | { "is": "shared", 
/**
 * What that is for, as it was written: `per 5 lb`.
 */
base: string, } | { "is": "packed" } | { "is": "which", 
/**
 * The key of the question in the table of words: `which_salt`.
 */
ask: WhichKey, };

/**
 * A question about one reading.
 */
export type Questioned = { 
/**
 * Its place in the list of readings.
 */
reading: number, 
/**
 * What is odd about it.
 */
odd: Odd, 
/**
 * What may have been meant, to choose from.
 */
choices: Array<string>, };

/**
 * Room on racks, pieces side by side: by the weight and the usual thickness (memory), a quarter more for gaps (our own
 * judgement).
 */
export type RackRoom = { 
/**
 * The least.
 */
low: Area, 
/**
 * What is likely.
 */
likely: Area, 
/**
 * The most.
 */
high: Area, 
/**
 * Racks of 40 by 30 cm that hold the most.
 */
racks: number, };

/**
 * Shelves or racks of one size.
 */
export type Racks = { 
/**
 * How many, 1 to 99.
 */
count: number, 
/**
 * How wide one is.
 */
wide: string, 
/**
 * How deep one is.
 */
deep: string, };

/**
 * How far a cure goes.
 */
export type Reach = { 
/**
 * So much meat, in a rub.
 */
meat: string, 
/**
 * At this aim, in ppm of sodium nitrite.
 */
ppm: number, };

/**
 * One field.
 */
export type ReadField = { 
/**
 * The page's own name for it; comes back with its value or its problem.
 */
key: string, 
/**
 * What it holds.
 */
kind: FieldKind, 
/**
 * What was typed.
 */
text: string, 
/**
 * The unit that stands beside the field, for a bare number.
 */
unit?: string, 
/**
 * True when it may be left empty.
 */
optional?: boolean, };

/**
 * Content of `read`.
 */
export type ReadFields = { 
/**
 * The fields, in the order of the form.
 */
fields: Array<ReadField>, 
/**
 * Units for what is shown back.
 */
units: System, };

/**
 * One clause as read.
 */
export type ReadLine = { 
/**
 * As it was written.
 */
text: string, 
/**
 * What it is taken for.
 */
taken: Taken, 
/**
 * Key in the pantry, when only one is left; empty otherwise.
 */
item: string, 
/**
 * What it names; nothing where it names nothing.
 */
thing: Thing | null, 
/**
 * An amount that is for each of what its sentence names, as it was written.
 */
each: string | null, 
/**
 * The measure it goes by, of those that have one name, by its key: `us_cup`.
 */
by: MeasureKey | null, 
/**
 * Grams for the meat, or for what the line itself says: low, usual, high. Empty where it is not weighed.
 */
grams: Array<string>, 
/**
 * What is to be known of it; empty for a line that is plain.
 */
flags: Array<LineFlag>, 
/**
 * What it is called in the text; empty where it names nothing.
 */
name: string, 
/**
 * How much, in its own unit, as least and most; empty where it does not say.
 */
amount: Array<string>, 
/**
 * That unit by its key, such as `lb` or `each`; empty without an amount.
 */
unit: string, 
/**
 * For how much meat or water: least and most, and the unit.
 */
per: [string, string, string] | null, 
/**
 * Per cent printed beside a cure.
 */
strength: string | null, 
/**
 * What is done, in order, where it is a step.
 */
steps: Array<ReadStep>, };

/**
 * One deed of a step as read; what it does not say is nothing.
 */
export type ReadStep = { 
/**
 * What is done; nothing where it is no step of the card, and stays as it was written.
 */
do: Do | null, 
/**
 * Minutes, least and most.
 */
minutes: [string, string] | null, 
/**
 * Degrees Celsius around it, least and most.
 */
at: [string, string] | null, 
/**
 * Degrees Celsius in the middle of the meat at which it ends.
 */
until: string | null, 
/**
 * How long, in the person's units.
 */
lasts: Lasts | null, 
/**
 * The warmer end around it, in the person's units.
 */
heat: string | null, 
/**
 * What the middle has to reach, in the person's units.
 */
inside: string | null, };

/**
 * One value.
 */
export type ReadValue = { 
/**
 * The field's key.
 */
key: string, 
/**
 * Text to store: reads back to the same value. Nothing for a field left empty.
 */
value: string | null, 
/**
 * The same in the user's units, rounded for reading.
 */
shown: string, };

/**
 * What was read.
 */
export type ReadValues = { 
/**
 * Fields that were read, in order.
 */
values: Array<ReadValue>, 
/**
 * Fields that were not, in order; `field` is the key.
 */
problems: Array<Problem>, };

/**
 * A recipe as read.
 */
export type Reading = { 
/**
 * Every clause, in order.
 */
lines: Array<ReadLine>, 
/**
 * Questions, answered or not, in the order of the text.
 */
questions: Array<Asked>, 
/**
 * The meat it is reckoned for; nothing until it is known.
 */
meat: Figure | null, 
/**
 * The verdict on the dose; nothing where the meat or the method is not known.
 */
verdict: Verdict | null, 
/**
 * Dangers in what it tells to do.
 */
dangers: Array<Danger>, 
/**
 * The language it is in: nothing is assured of what is not English.
 */
tongue: Tongue, 
/**
 * The recipe in proportions; nothing while a question is open.
 */
recipe: Recipe | null, 
/**
 * Why there is none; nothing where there is one.
 */
bar: NoRecipe | null, 
/**
 * What is to be known of it.
 */
beside: Array<Beside>, };

/**
 * A recipe. Weights are proportions, so it has no size of its own.
 */
export type Recipe = { 
/**
 * What it is called, 1 to 60 characters.
 */
name: string, 
/**
 * Two capital letters by which a batch of it is known.
 */
tag: string, 
/**
 * How the cure gets into the meat.
 */
method: Method, 
/**
 * Where only a share of the brine goes into the meat, by pump or by pick-up: that share of green weight, `10 %`.
 */
take?: string | null, 
/**
 * When and how it is eaten; decides which limit can judge it.
 */
eaten: Eaten, 
/**
 * Curing agents, at most two.
 */
cures: Array<Cure>, 
/**
 * Everything else that is weighed, in the order it is written.
 */
lines: Array<Line>, 
/**
 * What is done after weighing, in order.
 */
steps: Array<Step>, 
/**
 * Remarks for next time.
 */
notes?: string, 
/**
 * What stood in the text it was read from and was not understood, as it was written; each until somebody settles it.
 */
unread?: Array<string>, };

/**
 * A recipe worked for one weight.
 */
export type RecipeCard = { 
/**
 * The green weight it is worked for.
 */
weight: Figure, 
/**
 * Lines, cure first.
 */
rows: Array<CardRow>, 
/**
 * Steps, in order.
 */
steps: Array<Told>, 
/**
 * Steps that end below what has to be read.
 */
low: Array<LowStep>, 
/**
 * Verdict on the dose it aims at, on the user's scale.
 */
verdict: Verdict, 
/**
 * Allergens in it.
 */
allergens: Array<Allergen>, 
/**
 * What is the user's own and whose allergens are not known, by name.
 */
unknown: Array<string>, 
/**
 * Cautions for the meat and the method.
 */
cautions: Array<Caution>, };

/**
 * A list of a recipe.
 */
export type RecipeList = "cures" | "lines" | "steps" | "unread";

/**
 * One thing that a recipe may not be, with the figures of the rule.
 */
export type RecipeWrong = { "is": "recipe_too_many", 
/**
 * Of what.
 */
list: RecipeList, 
/**
 * The most of it.
 */
most: number, } | { "is": "unread_empty" } | { "is": "cooked_hangs" } | { "is": "hangs_without_rub" } | { "is": "brine_wants_water" } | { "is": "no_such_cure", 
/**
 * The first characters of the key.
 */
item: string, } | { "is": "mix_not_known" } | { "is": "cure_holds_none" } | { "is": "aim_nought" } | { "is": "aim_too_high", 
/**
 * Highest aim, ppm.
 */
most: number, } | { "is": "aim_as_strong" } | { "is": "pure_has_one_strength" } | { "is": "allergens_known" } | { "is": "agent_known" } | { "is": "not_in_pantry", 
/**
 * The first characters of the key.
 */
item: string, } | { "is": "cure_among_lines" } | { "is": "sounds_like_cure" } | { "is": "nothing_evens_out" } | { "is": "no_brine_here" } | { "is": "water_without_brine" } | { "is": "water_by_green_weight" } | { "is": "line_too_much" } | { "is": "take_missing" } | { "is": "take_out_of_bounds" } | { "is": "take_unasked" } | { "is": "turned_too_often" } | { "is": "name_missing", 
/**
 * Most characters.
 */
most: number, } | { "is": "name_one_line" } | { "is": "text_too_long", 
/**
 * Characters in it.
 */
long: number, 
/**
 * Most characters.
 */
most: number, } | { "is": "hidden_character" } | { "is": "tag_form" };

/**
 * Content of `check`: a record as it is stored.
 */
export type Record = { "recipe": Recipe } | { "batch": Batch } | { "settings": Settings } | { "stock": Stock };

/**
 * A remark on the list.
 */
export type Remark = { "is": "below_step", 
/**
 * What it is called.
 */
of: ItemName, 
/**
 * How much it is.
 */
weight: string, } | { "is": "salt_in_cure", 
/**
 * It is a premix that brings it.
 */
premix: boolean, 
/**
 * What it brings.
 */
brings: string, 
/**
 * What is aimed at.
 */
aimed: string, } | { "is": "no_salt_line", 
/**
 * What the cure brings.
 */
brings: string, } | { "is": "sweet_cure" } | { "is": "stock_of_the_day" } | { "is": "cure_below_step" } | { "is": "accelerator", 
/**
 * Rounded up.
 */
ppm: number, 
/**
 * How that lies.
 */
lies: Accelerated, 
/**
 * By which rule; nothing for the one on bacon, 9 CFR 424.22(b).
 */
rule: string | null, } | { "is": "odd_weight", 
/**
 * Which, and what is usual.
 */
odd: OddWeight, } | { "is": "in_already", 
/**
 * What went in.
 */
portion: Measured, } | { "is": "no_premix" };

/**
 * What is to be done.
 */
export type Remedy = { 
/**
 * Which end it is.
 */
way: Way, 
/**
 * The act.
 */
act: Act, 
/**
 * Conditions that all have to hold.
 */
only_if: Array<OnlyIf>, 
/**
 * What hurts, where it has a name.
 */
hazard: Hazard | null, 
/**
 * Where it comes from.
 */
source: Source, };

/**
 * One question with its content; see the table at the head of [`crate::door`].
 */
export type Request = { "read": ReadFields } | { "tables": Nothing } | { "starters": Nothing } | { "pieces": AskPieces } | { "card": AskCard } | { "turned": AskTurned } | { "weigh_out": AskWeighOut } | { "draft": AskDraft } | { "check_dose": AskDose } | { "standing": AskStanding } | { "next": AskNext } | { "link": AskLink } | { "open_link": AskOpen } | { "fire_log": AskFire } | { "check": Record } | { "read_recipe": AskReading } | { "plan_bag": AskBag } | { "trouble": AskTrouble } | { "plan_back": AskBack } | { "calendar": AskCalendar } | { "labels": AskLabels } | { "brine": AskBrine } | { "spoon": AskSpoon } | { "scale": AskScale } | { "stock": AskStock } | { "cure_clock": AskClock } | { "learn_cut": AskCut } | { "larder": AskLarder } | { "ledger": AskLedger } | { "sources": Nothing };

/**
 * A stretch of rest: asleep, away, in the blind.
 */
export type Rest = { 
/**
 * From.
 */
from: number, 
/**
 * To.
 */
to: number, };

/**
 * A row of the pantry, as it is offered or was taken.
 */
export type RowOf = { 
/**
 * Its key.
 */
item: IngredientKey, 
/**
 * Of a curing agent: per cent of nitrite and of nitrate that its packet says, as the table has them; empty where it
 * says nothing of one.
 */
cure: [string, string] | null, 
/**
 * True for what is called like a cure and is none: pink salt for the table.
 */
no_cure: boolean, };

/**
 * A rule of thumb.
 */
export type Rule = { 
/**
 * Which.
 */
rule: Thumb, 
/**
 * What it gives, `7 d`.
 */
gives: string, 
/**
 * What the clock says: salt at the centre after that time, per cent of the final.
 */
centre: number, };

/**
 * Salt that comes into the meat with what is taken up of a brine, the cure's included.
 */
export type SaltIn = { 
/**
 * Of green weight, `1.8 %`.
 */
comes: Figure, 
/**
 * Least that tastes of a cure and lets one do its work, `1.5 %`. Common practice, no source.
 */
least: Figure, 
/**
 * True where less comes in.
 */
is_short: boolean, };

/**
 * What salt is a share of.
 */
export type SaltOf = "green" | "taken_up" | "meat_and_water";

/**
 * A measure of strength.
 */
export type Scale = "percent" | "salometer" | "gravity" | "per_litre" | "per_us_gallon" | "per_imperial_gallon";

/**
 * What a scale shows for one known weight.
 */
export type ScaleRow = { 
/**
 * The known weight, as it was typed.
 */
known: string, 
/**
 * What the scale shows.
 */
reads: string, 
/**
 * By how much it is off, `+0.4 g`.
 */
off: string, 
/**
 * The same in per cent of the known weight.
 */
percent: string, };

/**
 * How far the scale is off.
 */
export type ScaleSheet = { 
/**
 * True where every reading fits: within its step, and what the known weight may be off.
 */
fits: boolean, 
/**
 * One row for each check.
 */
rows: Array<ScaleRow>, };

/**
 * What was seen at the refrigerator.
 */
export type Seen = "read" | "frozen" | "thawed" | "power_off" | "power_on";

/**
 * Units, scale and jurisdiction. Stored values do not depend on it.
 */
export type Settings = { 
/**
 * Which units are printed.
 */
units: System, 
/**
 * The smallest step the scale shows: `5 g`, `1 g`, `0.1 g`, `0.01 g`.
 */
scale_step: string, 
/**
 * Key of the jurisdiction whose limits judge a dose, `us-home`.
 */
profile: string, 
/**
 * Level spoons of the user's own, weighed; they stand in place of the general ranges.
 */
spoons?: Array<OwnSpoon>, 
/**
 * Premixes and stocks of the user's own, to choose as a cure.
 */
mixes?: Array<Cure>, 
/**
 * What cut pieces told about how fast salt goes into this user's meat. Empty: nothing, or forgotten.
 */
learned?: Array<Finding>, 
/**
 * What fires told of this user's smoker. Empty: nothing, or forgotten.
 */
smoked?: Array<Smoked>, 
/**
 * Hours and room of the house, for planning.
 */
house?: House, };

/**
 * How much of a line, on which base.
 */
export type Share = { "of": "green_weight", "amount": string } | { "of": "meat_and_water", "amount": string } | { "of": "brine", "amount": string } | { "of": "piece", "amount": string };

/**
 * What a share is of.
 */
export type ShareOf = "green_weight" | "meat_and_water" | "brine" | "piece";

/**
 * What the list stands on.
 */
export type SheetFact = { "is": "green", 
/**
 * In the person's units.
 */
weight: string, } | { "is": "aim", 
/**
 * `150 ppm`.
 */
ppm: string, 
/**
 * By the rule that is chosen, where the recipe's own is a proposal.
 */
by_rule: boolean, } | { "is": "salt", 
/**
 * `2.2 %`.
 */
percent: string, 
/**
 * Of what.
 */
of: SaltOf, } | { "is": "accelerator", 
/**
 * Rounded up.
 */
ppm: number, } | { "is": "scale", 
/**
 * `0.1 g`.
 */
step: string, };

/**
 * What one fire told of the smoker: five parameters in thousandths of a standard deviation of what is usual for its kind.
 */
export type Smoked = { 
/**
 * A fan moves the air.
 */
fan: boolean, 
/**
 * A water pan stands in it, or the pieces are wrapped.
 */
cover: Cover, 
/**
 * When its first reading was, in milliseconds since 1970: one fire teaches once.
 */
at: number, 
/**
 * Where each parameter lies.
 */
centre: [number, number, number, number, number], 
/**
 * What is left open of each.
 */
spread: [number, number, number, number, number], };

/**
 * Why a batch is not planned, or does not fit.
 */
export type Snag = { "is": "held" } | { "is": "done" } | { "is": "no_steps" } | { "is": "no_room", 
/**
 * Number of the place.
 */
place: number, } | { "is": "too_large", 
/**
 * Number of the place.
 */
place: number, 
/**
 * What it lies on, in square centimetres.
 */
load: number, 
/**
 * What the place has, in square centimetres.
 */
holds: number, } | { "is": "held_steps" } | { "is": "too_late" } | { "is": "no_time" };

/**
 * Soaking to a target.
 */
export type Soak = { 
/**
 * In fresh water, changed each half hour; in fast meat and in slow.
 */
changed: [string, string], 
/**
 * In three times its weight of still water; nothing where that does not get so far.
 */
still: [string, string] | null, };

/**
 * Where an answer comes from.
 */
export type Source = "poison_centers" | "infants" | "cfr_172" | "first_hour" | "least_120" | "cold_storage" | "power_fridge" | "power_freezer" | "danger_zone" | "thawing" | "big_thaw" | "clemson" | "trichinella" | "added_once" | "weighed_dose" | "brine_once" | "inert_vessel" | "come_up" | "part_cooked" | "food_code_cool" | "botulism_help" | "botulism_signs" | "vacuum_10d" | "oil_days" | "oil_hours";

/**
 * Where the figures come from.
 */
export type Sources = { 
/**
 * The table, and each source with its status; no status where the source says it itself.
 */
tables: [TableKey, [string, Status | null][]][], };

/**
 * Earliest, likely and latest moment, in milliseconds since 1970; 80 % lie between.
 */
export type Span3 = { 
/**
 * One in ten is sooner.
 */
earliest: number, 
/**
 * As likely sooner as later.
 */
likely: number, 
/**
 * One in ten is later.
 */
latest: number, };

/**
 * Level spoons, to catch a slip; not to weigh by.
 */
export type Spoon = { 
/**
 * Which spoon, or cups.
 */
unit: SpoonUnit, 
/**
 * Least, usual, most: `4.9`, `5.4`, `5.8`.
 */
low: string, 
/**
 * See `low`.
 */
typical: string, 
/**
 * See `low`.
 */
high: string, 
/**
 * Where the weight of a spoon comes from.
 */
source: SpoonSource, };

/**
 * A spoon to weigh.
 */
export type SpoonKind = "teaspoon" | "tablespoon";

/**
 * A spoon as it is kept, and what it rests on.
 */
export type SpoonSheet = { 
/**
 * To keep in the settings.
 */
spoon: OwnSpoon, 
/**
 * Least, usual and most of one spoon in grams, for reading: `4.90`.
 */
holds: [string, string, string], 
/**
 * Only the sum was weighed: 15 % either way is a judgement. Else least and most, with a quarter of the distance beyond.
 */
together: boolean, 
/**
 * What was in it.
 */
of: ItemName, 
/**
 * What such a spoon of it holds in general in grams, least and most.
 */
general: [string, string] | null, };

/**
 * Where the weight of a spoon comes from.
 */
export type SpoonSource = { "is": "own" } | { "is": "table", 
/**
 * Where it is from.
 */
source: string, 
/**
 * Numbers of the food in that database.
 */
ndb: Array<string>, 
/**
 * How well it is known.
 */
status: Status, };

/**
 * What is counted to catch a slip.
 */
export type SpoonUnit = "teaspoons" | "tablespoons" | "cups";

/**
 * What a level US teaspoon weighs, in grams as text.
 */
export type SpoonWeight = { 
/**
 * Least.
 */
low: string, 
/**
 * Usual.
 */
typical: string, 
/**
 * Most.
 */
high: string, };

/**
 * A weight with both ends.
 */
export type Spread = { 
/**
 * What is likely.
 */
likely: string, 
/**
 * The least and the most; nothing where the figure is one.
 */
ends: [string, string] | null, };

/**
 * The five stages of a batch.
 */
export type Stage = "pieces" | "weigh" | "cure" | "fire" | "pack";

/**
 * Where a stage of a chill stands.
 */
export type StageLeft = { "is": "not_begun" } | { "is": "running", 
/**
 * So long is left.
 */
left: string, } | { "is": "done", 
/**
 * In so long at most.
 */
took: string, } | { "is": "late", 
/**
 * So long at least.
 */
least: string, 
/**
 * So long is allowed.
 */
most: string, } | { "is": "unseen", 
/**
 * Up to so long.
 */
took: string, 
/**
 * So long is allowed.
 */
most: string, };

/**
 * The doubts on a batch and what of it is assured.
 */
export type StandingSheet = { 
/**
 * Every doubt, what is past mending first.
 */
doubts: Array<Doubt>, 
/**
 * What may be said.
 */
assured: AssuredSheet, };

/**
 * The recipes that come with the page.
 */
export type Starters = { 
/**
 * Five recipes.
 */
recipes: Array<Recipe>, 
/**
 * A batch of the first, with pieces, to learn by.
 */
demo: Batch, };

/**
 * Where a batch stands.
 */
export type State = { 
/**
 * The batch's id as it came with the request.
 */
batch: string, 
/**
 * The stage in hand.
 */
stage: Stage, 
/**
 * True when nothing on it may go on before a doubt is cleared, or at all.
 */
held: boolean, 
/**
 * All that is in doubt, the gravest first.
 */
doubts: Array<Doubt>, 
/**
 * Times of it that cannot be right, or hardly; none of one that is put away.
 */
odd_times: Array<OddTime>, 
/**
 * Where it is; nothing where it is held or cannot be reckoned.
 */
whereabouts: Whereabouts | null, 
/**
 * Its green weight, once the cure is on.
 */
green: string | null, 
/**
 * Why it cannot be reckoned, though its cure is on.
 */
problem: Problem | null, 
/**
 * True when every step is ticked.
 */
finished: boolean, 
/**
 * Every step and turn of the batch with its ticks, in order.
 */
jobs: Array<Job>, 
/**
 * When it comes out of the cure; nothing before the cure is on.
 */
until: Until | null, 
/**
 * Every time of it, the jobs' among them; none before the cure is on.
 */
times: Array<Timed>, };

/**
 * How well a figure is known.
 */
export type Status = "published" | "quoted" | "uncontrolled" | "memory" | "judgement" | "common_practice";

/**
 * One step after weighing.
 */
export type Step = { 
/**
 * What is done.
 */
do: Do, 
/**
 * How long it takes, `36 h`. Nothing: done in a moment.
 */
lasts?: string | null, 
/**
 * Turn the pieces every so often while it lasts.
 */
turn_every?: string | null, 
/**
 * Temperature of the refrigerator or the smoker.
 */
at?: string | null, 
/**
 * Temperature in the middle of the coldest piece at which it ends.
 */
until?: string | null, 
/**
 * In the user's own words.
 */
note?: string, };

/**
 * One thing that came into the house: something for the pantry, or a pack.
 */
export type Stock = { 
/**
 * Key in the pantry, `own`, `bags`, or `pack`.
 */
item: string, 
/**
 * What it is called; empty for the pantry's word.
 */
name?: string, 
/**
 * How much came in; nought for bags, and for a pack that is not weighed.
 */
weight: string, 
/**
 * For bags: how many.
 */
count?: number | null, 
/**
 * For a pack: the id of its batch.
 */
batch?: string, 
/**
 * When it came in or was packed, in milliseconds since 1970.
 */
at: number, 
/**
 * For a pack: it lies in the freezer.
 */
frozen?: boolean, 
/**
 * For a pack: its use-by.
 */
until?: number | null, 
/**
 * For a pack: who got it, or how it was eaten. Empty while it is here.
 */
to?: string, 
/**
 * When it went.
 */
gone?: number | null, };

/**
 * How to make it and how much to take.
 */
export type StockSheet = { 
/**
 * Cure to weigh for making it.
 */
cure: Figure, 
/**
 * Salt or water to weigh for making it.
 */
filler: Figure, 
/**
 * What to weigh of it for this meat.
 */
take: Figure, 
/**
 * Least and most of the dose in ppm with the cure weighed neat on this scale, and by way of this.
 */
ranges: [[number, number], [number, number]], 
/**
 * What the cure's bag prints.
 */
neat: Strength, 
/**
 * How strong this is.
 */
strength: Strength, 
/**
 * To keep in the settings.
 */
mix: Cure, };

/**
 * What the bag of a cure prints, per cent of it; nothing of what is not in it.
 */
export type Strength = { 
/**
 * Sodium nitrite, `6.25 %`.
 */
nitrite: string | null, 
/**
 * Sodium nitrate.
 */
nitrate: string | null, };

/**
 * Which units a person reads. Stored values do not depend on it.
 */
export type System = "metric" | "us";

/**
 * Which rows are asked.
 */
export type Table = "meat65" | "meat70" | "bird";

/**
 * Lists for pickers.
 */
export type Tables = { 
/**
 * Everything in the pantry.
 */
ingredients: Array<Ingredient>, 
/**
 * Cuts with their weights.
 */
cuts: Array<Cut>, 
/**
 * What a bag can be planned by.
 */
game: Array<GameName>, 
/**
 * Jurisdictions.
 */
profiles: Array<Profile>, 
/**
 * Steps a scale may have, `5 g` to `0.01 g`.
 */
scale_steps: Array<string>, 
/**
 * Settings of a new page.
 */
settings: Settings, };

/**
 * What a clause is taken for.
 */
export type Taken = "item" | "taste" | "meat" | "step" | "heading" | "remark" | "unread";

/**
 * What a task of a plan is.
 */
export type Task = { "is": "start", 
/**
 * The method.
 */
method: Method, } | { "is": "step", 
/**
 * What is done.
 */
do: Do, } | { "is": "turn", 
/**
 * The method.
 */
method: Method, } | { "is": "ready" };

/**
 * What a cold reading was of.
 */
export type Thermometer = "fridge" | "meat" | "room";

/**
 * A thickness on the steps of a rule.
 */
export type Thick = { 
/**
 * `25 mm`, `1⅛ in`: reads back as a length.
 */
now: string, 
/**
 * One step less; nothing at the least.
 */
thinner: string | null, 
/**
 * One step more; nothing at the most.
 */
thicker: string | null, 
/**
 * True while it is the usual one of the cut and nobody has measured.
 */
usual: boolean, 
/**
 * Where it is rather another unit.
 */
odd: OddThickness | null, };

/**
 * What a clause names.
 */
export type Thing = { "is": "row", 
/**
 * That row.
 */
row: RowOf, } | { "is": "open", 
/**
 * Their keys.
 */
items: IngredientKey[], } | { "is": "food", 
/**
 * As it is called.
 */
name: string, } | { "is": "own", 
/**
 * As it is called.
 */
name: string, };

/**
 * What is through at its centre.
 */
export type Through = "colour" | "even";

/**
 * A rule of thumb for the time in the cure.
 */
export type Thumb = "seven_days_an_inch" | "quarter_inch_a_day" | "two_days_a_pound";

/**
 * Something done, with its time.
 */
export type Tick = { 
/**
 * What: `cure:0`, `line:2`, `rub`, `label`, `step:3`, `turn:0:2`, `draw:2` for a size class, `end`.
 */
of: string, 
/**
 * When, in milliseconds since 1970-01-01 UTC.
 */
at: number, 
/**
 * For something weighed: what went in.
 */
weight?: string | null, 
/**
 * For a cure: the nitrite in what went in, thinned where it was a premix.
 */
nitrite?: string | null, 
/**
 * For a cure: the nitrate in what went in.
 */
nitrate?: string | null, 
/**
 * For a cure: the step of the scale that weighed it; a finer scale later does not make it more certain.
 */
step?: string | null, };

/**
 * One time of a batch.
 */
export type Timed = { 
/**
 * `step:1`; `turn:0:2`; `draw:0`, `rinse:0` and `dry:0` of a size class that comes out of the cure first; `pull:0` of one over
 * the fire; `two_hours:5` and `cold:5` of a chill; `end`.
 */
id: string, 
/**
 * Index of its step; the number of steps for the end.
 */
step: number, 
/**
 * The size class it is of; nothing for all that are left.
 */
class: number | null, 
/**
 * When, in milliseconds since 1970: its tick, or when it is due.
 */
at: number, 
/**
 * When it ends if begun then.
 */
ends: number | null, 
/**
 * What its length rests on, or of a mark its time.
 */
kind: Basis, 
/**
 * Somebody has to be by all the while.
 */
presence: boolean, 
/**
 * Where it was due before it made way for rest.
 */
moved: number | null, };

/**
 * A job to tick that is not weighing.
 */
export type Todo = { 
/**
 * Id for its tick: `rub`, `label`.
 */
id: string, 
/**
 * What to do.
 */
what: TodoOf, 
/**
 * When it was ticked, in milliseconds since 1970.
 */
ticked: number | null, };

/**
 * What there is to do once all is weighed.
 */
export type TodoOf = { "is": "put_on", 
/**
 * How.
 */
method: Method, 
/**
 * So many pieces.
 */
pieces: number, 
/**
 * Nobody counted them.
 */
about: boolean, } | { "is": "close", 
/**
 * By what it is put on with.
 */
method: Method, };

/**
 * A step with its figures.
 */
export type Told = { 
/**
 * What is done.
 */
do: Do, 
/**
 * How long it lasts.
 */
lasts: string | null, 
/**
 * At what temperature.
 */
at: string | null, 
/**
 * How often it is turned.
 */
turn_every: string | null, 
/**
 * What the coldest piece has to read.
 */
until: string | null, 
/**
 * The user's own word behind it; empty where there is none.
 */
note: string, };

/**
 * The languages that are told apart.
 */
export type Tongue = "english" | "german" | "french" | "other";

/**
 * What the packs weigh beside their meat.
 */
export type TooHeavy = { 
/**
 * Of those that are weighed, in all.
 */
packs: Figure, 
/**
 * The meat before its cure.
 */
meat: Figure, };

/**
 * The cards, and how far the open one is.
 */
export type Trouble = { 
/**
 * Every card, in order.
 */
cards: Array<Card>, 
/**
 * The questions answered so far that count, in the order in which they are asked.
 */
answered: Array<[Ask, Choice]>, 
/**
 * The question that is open, with its answers.
 */
question: [Ask, Array<Choice>] | null, 
/**
 * The end, once nothing is open.
 */
remedy: Remedy | null, 
/**
 * Title of its source, with what the title says of the figures.
 */
source: string | null, 
/**
 * How well the source is known.
 */
status: Status | null, 
/**
 * Cautions that stand beside an end.
 */
cautions: Array<Caution>, 
/**
 * What the log of the batch says of it.
 */
log: LogSaid | null, 
/**
 * The questions that the log answered, where nobody said otherwise.
 */
known: Array<Ask>, };

/**
 * Why a text is no quantity of its kind.
 */
export type TypedWrong = { "is": "quantity_too_long", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of it.
 */
typed: string, } | { "is": "quantity_missing", 
/**
 * Of what.
 */
of: KindOf, } | { "is": "no_unit", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of it.
 */
typed: string, } | { "is": "wrong_unit", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of the word.
 */
unit: string, } | { "is": "units_out_of_order", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of the text.
 */
typed: string, } | { "is": "too_many_digits", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of the text.
 */
typed: string, } | { "is": "two_readings", 
/**
 * The first characters of the text.
 */
typed: string, 
/**
 * Both readings.
 */
readings: [string, string], } | { "is": "quantity_too_small", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The least.
 */
least: string, } | { "is": "quantity_too_large", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The most.
 */
most: string, } | { "is": "quantity_not_read", 
/**
 * Of what.
 */
of: KindOf, 
/**
 * The first characters of the text.
 */
typed: string, };

/**
 * When a batch comes out. Times are in milliseconds since 1970.
 */
export type Until = { 
/**
 * The hour.
 */
at: number, 
/**
 * What it rests on.
 */
kind: Basis, 
/**
 * For a forecast: what nine pieces in ten have come to by then.
 */
through: Through | null, 
/**
 * By the clock, where every size in the cure has a thickness.
 */
clock: number | null, 
/**
 * By the recipe's own hours.
 */
recipe: number | null, 
/**
 * The two differ by more than a tenth of the recipe's hours.
 */
differs: boolean, 
/**
 * The hour makes way for hours of rest: it would have come out in them.
 */
moved: boolean, 
/**
 * Raw meat does not keep as long as what it goes by would have it.
 */
capped: Capped | null, 
/**
 * The last moment that raw meat keeps in its cure, where that is known.
 */
last: number | null, 
/**
 * Size classes whose thickness the answer needs.
 */
needs_thickness: Array<number>, 
/**
 * Each size class that is still in and has a clock.
 */
classes: Array<ClassUntil>, };

/**
 * What is odd about a time.
 */
export type Untimely = "to_come" | "before_kill" | "earlier" | "long_after_kill";

/**
 * The verdict on a dose.
 */
export type Verdict = { 
/**
 * What can be said.
 */
outcome: Outcome, 
/**
 * What that rests on, the deciding one first.
 */
grounds: Array<Ground>, 
/**
 * True when all of the range supports it; false for "may be".
 */
sure: boolean, 
/**
 * Its word.
 */
word: VerdictWord, 
/**
 * The shape beside it.
 */
mark: Mark, 
/**
 * What is said beside the word, in this order.
 */
says: Array<DoseRemark>, 
/**
 * True when nothing may be done with the batch until its numbers change.
 */
held: boolean, 
/**
 * Ingoing nitrite. Nothing when it cannot be reckoned.
 */
nitrite: Ppm | null, 
/**
 * Ingoing nitrate, where the agent holds any.
 */
nitrate: Ppm | null, 
/**
 * Of what is taken out of a strong brine before it evens out: the nitrite at the surface then.
 */
surface: Ppm | null, 
/**
 * The effective least, in ppm of sodium nitrite.
 */
least: number, 
/**
 * The limit, in ppm of sodium nitrite.
 */
limit: number, 
/**
 * Right end of the picture's axis, in ppm: 300, 700, 1500 …
 */
axis: number, 
/**
 * The methods by which it is counted: two where it is not known which.
 */
basis: Array<Method>, 
/**
 * Key of the jurisdiction.
 */
profile: ProfileKey, 
/**
 * Limit and least with where they are published.
 */
source: string, 
/**
 * How well that is known; by a limit from memory nothing is in range that is not so by the published one too.
 */
status: Status, 
/**
 * What to do next, the first first.
 */
next: Array<NextStep>, 
/**
 * Of a dose that is on the meat and over: the raw meat that would bring it in range. Nothing where no amount is known
 * to, an unweighed spoon above all.
 */
more_meat: MoreMeat | null, 
/**
 * An aim for the recipe, `160 ppm`, with which the same list is in range on this scale; while nothing is on the meat
 * yet and the aim it has does not do.
 */
aim: string | null, 
/**
 * Cautions that stand beside the figure.
 */
cautions: Array<Caution>, 
/**
 * What may hold nitrite or nitrate and is not counted.
 */
may_hold: Array<MayHold>, };

/**
 * The word of a verdict.
 */
export type VerdictWord = "in_range" | "over" | "may_be_over" | "too_low" | "may_be_too_low" | "needs_ascorbate" | "no_cure" | "cannot_tell" | "cannot_say_yet";

/**
 * Where the brine stands.
 */
export type Vessel = { "shape": "box", 
/**
 * Inside length.
 */
length: string, 
/**
 * Inside width.
 */
width: string, 
/**
 * To the top of the brine.
 */
depth: string, } | { "shape": "round", 
/**
 * Inside, across.
 */
across: string, 
/**
 * To the top of the brine.
 */
depth: string, } | { "shape": "bag" } | { "shape": "water", 
/**
 * Its weight; a litre is 1000 g.
 */
water: string, };

/**
 * How much of a thing is wanted.
 */
export type Wanted = { "is": "weight", 
/**
 * For the least and the most meat, and what is likely.
 */
weight: Spread, } | { "is": "bags", 
/**
 * To cure in, one for each recipe.
 */
cure: number, 
/**
 * For packs.
 */
packs: number, 
/**
 * Pieces to a pack.
 */
per: number, };

/**
 * Where a card ends: what was found, and what follows.
 */
export type Way = "poison_call" | "poison_baby" | "poison_over" | "ate_in_range" | "dose_hold" | "dose_thin" | "dose_out" | "dose_top_up" | "dose_raw" | "dose_old" | "power_unknown" | "power_long" | "power_cold" | "power_ice" | "power_thawed" | "power_chill" | "power_warm" | "warm_never" | "warm_chill" | "warm_out" | "thaw_old" | "thaw_cold" | "thaw_at_once" | "thaw_room" | "thaw_out" | "froze_cure" | "froze_after" | "forgot_in" | "forgot_likely" | "forgot_not_in" | "forgot_both" | "forgot_old" | "sat_warm" | "sat_old" | "sat_strong" | "sat_even" | "leak_little" | "leak_late" | "leak_raw" | "leak_old" | "brine_pour" | "brine_used" | "brine_move" | "brine_metal" | "stall_more_heat" | "stall_finish" | "stall_out" | "fire_slow" | "fire_relight" | "fire_oven" | "fire_out" | "early_cooled" | "early_finish" | "early_out" | "cool_now" | "cool_stood" | "cool_met" | "cool_slow" | "pack_doctor" | "pack_out" | "vacuum_old" | "vacuum_cold" | "vacuum_open" | "vacuum_out" | "oil_old" | "oil_cold" | "oil_out";

/**
 * How the way up stands.
 */
export type WayStands = { "is": "slow", 
/**
 * So long on its way.
 */
took: string, } | { "is": "running", 
/**
 * So long by now.
 */
took: string, } | { "is": "fine", 
/**
 * It took so long.
 */
took: string, } | { "is": "unseen", 
/**
 * What was read first.
 */
first: string, };

/**
 * How long it is between cold and hot, where that is worth a word. At home it comes through in so many hours (UNL
 * extension, published).
 */
export type WayUp = { 
/**
 * How it stands.
 */
stands: WayStands, 
/**
 * Cold.
 */
from: Figure, 
/**
 * Hot.
 */
to: Figure, 
/**
 * The most there is for it.
 */
most: string, };

/**
 * One line to weigh.
 */
export type WeighLine = { 
/**
 * Id for its tick: `cure:0`, `line:2`.
 */
id: string, 
/**
 * What it is called; nothing for a curing agent.
 */
item: ItemName | null, 
/**
 * Which curing agent: weigh it, a spoon is too loose. Nothing for any other line.
 */
cure: CureOf | null, 
/**
 * What to add, rounded to the scale's step; what was added once ticked.
 */
add: Figure, 
/**
 * The same in grams, `3.5 g`.
 */
weight: string, 
/**
 * The tick to keep when it is in the bowl; the page puts its time in.
 */
tick: Tick, 
/**
 * Before rounding, in grams: `3.552 g`.
 */
exact: string, 
/**
 * Low and high where some pieces are not weighed yet.
 */
range: [Figure, Figure] | null, 
/**
 * What the scale will show after it; nothing for what is weighed apart.
 */
reads: Figure | null, 
/**
 * The spoon equivalent.
 */
spoon: Spoon | null, 
/**
 * How it came to that.
 */
why: LineWhy | null, 
/**
 * When it was ticked, in milliseconds since 1970.
 */
ticked: number | null, 
/**
 * Set where it was ticked and the list now asks for something else.
 */
changed: Changed | null, };

/**
 * Everything on the weigh-out screen and on its print.
 */
export type WeighSheet = { 
/**
 * Green weight in the user's system; the typical one when not all is weighed.
 */
green: Figure, 
/**
 * Low and high green weight where some pieces are not weighed yet.
 */
green_range: [Figure, Figure] | null, 
/**
 * False while some pieces have no weight: then the sheet is an estimate and nothing can be ticked.
 */
weighed: boolean, 
/**
 * Pieces in all.
 */
pieces: number, 
/**
 * True when a tick may be set: all is weighed and the verdict does not hold the batch.
 */
can_tick: boolean, 
/**
 * What goes into the bowl on one zeroing of the scale, cure first.
 */
bowl: Array<WeighLine>, 
/**
 * What the scale shows at the end.
 */
bowl_total: Figure, 
/**
 * The water of a brine, in a vessel of its own. Empty for a rub.
 */
vessel: Array<WeighLine>, 
/**
 * Jobs after weighing, to be ticked.
 */
todo: Array<Todo>, 
/**
 * The verdict on what this list puts in, or on what was put in.
 */
verdict: Verdict, 
/**
 * Set where the scale's step moves the dose by more than 15 %.
 */
coarse: Coarse | null, 
/**
 * Set where the list works with a premix.
 */
premix: Premix | null, 
/**
 * Green weight, aim, salt, scale.
 */
facts: Array<SheetFact>, 
/**
 * Where only a share of the brine goes in: the salt that comes into the meat by it.
 */
salt: SaltIn | null, 
/**
 * Where the sizes are bagged apart: the list of each bag, weighed into a bowl of its own.
 */
bags: Array<BagList>, 
/**
 * Remarks on the list: salt that the cure alone exceeds, a line below the scale's step.
 */
remarks: Array<Remark>, };

/**
 * What a doubt does.
 */
export type Weight = "warns" | "holds" | "forbids";

/**
 * Where a batch is.
 */
export type Whereabouts = { "is": "pieces_to_weigh" } | { "is": "not_in_cure" } | { "is": "cure_on" } | { "is": "in_cure", 
/**
 * The day of the cure, from one on.
 */
day: number, } | { "is": "begun", 
/**
 * The step; never the cure.
 */
do: Do, } | { "is": "finished" };

/**
 * Why something may be a curing agent.
 */
export type Why = "not_asked" | "holds" | "name_says_so" | "not_read" | "not_read_says_so";

/**
 * What is wished of a plan. Times are in milliseconds since 1970.
 */
export type Wish = { 
/**
 * When all is to be ready.
 */
ready_by: number, 
/**
 * Hours slept or in the blind: no task that can move falls into them.
 */
rests: Array<Rest>, 
/**
 * Batches at once in the refrigerator, over the fire, on the rack.
 */
room: [number, number, number], 
/**
 * Steps that were put to a time by hand; the rest follows.
 */
holds?: Array<Hold>, };

/**
 * What would make a batch fit. None of them is more cure.
 */
export type WouldFit = "thinner" | "half_as_thick" | "pump" | "smaller" | "more_cold" | "more_fire" | "more_rack";

/**
 * One thing that is wrong, with the figures of the rule that it breaks.
 */
export type Wrong = { "is": "bags_not_counted", 
/**
 * The most at a time.
 */
most: number, } | { "is": "too_large_to_reckon" } | { "is": "bag_wants_meat" } | { "is": "no_room_for_brine" } | { "is": "no_brine_strength" } | { "is": "cure_too_weak" } | { "is": "date_past" } | { "is": "date_too_far", 
/**
 * How many days a plan reaches.
 */
days: bigint, } | { "is": "plan_too_long", 
/**
 * Most batches.
 */
batches: number, 
/**
 * Most stretches of rest.
 */
rests: number, } | { "is": "bag_rows", 
/**
 * Most rows.
 */
most: number, } | { "is": "bag_recipes", 
/**
 * Most recipes.
 */
most: number, } | { "is": "bag_too_heavy" } | { "is": "no_such_game" } | { "is": "bag_count", 
/**
 * Most animals in a row.
 */
most: number, } | { "is": "animal_unweighed", 
/**
 * How it is weighed, by its key: `field_dressed`.
 */
weighed: string, } | { "is": "too_far_apart" } | { "is": "cure_not_read", 
/**
 * What was typed, shortened.
 */
typed: string, } | { "is": "cure_too_much" } | { "is": "cure_nothing", 
/**
 * What was typed, shortened.
 */
typed: string, } | { "is": "mix_parts" } | { "is": "cure_over_whole" } | { "is": "cure_too_strong", 
/**
 * Per cent of nitrite.
 */
nitrite: string, } | { "is": "no_such_cut" } | { "is": "no_such_card" } | { "is": "no_such_answer" } | { "is": "weight_after_fire" } | { "is": "not_of_form", 
/**
 * What the reader of requests says of it: for programs.
 */
why: string, } | { "is": "two_requests" } | { "is": "table_empty" } | { "is": "fields_too_many", 
/**
 * The most.
 */
most: number, } | { "is": "weight_nought" } | { "is": "length_nought" } | { "is": "time_nought" } | { "is": "printed_missing" } | { "is": "printed_wrong_unit" } | { "is": "printed_not_read", 
/**
 * The first characters of it.
 */
typed: string, } | { "is": "printed_out_of_bounds" } | { "is": "count_not_read", 
/**
 * The first characters of it.
 */
typed: string, 
/**
 * Most pieces.
 */
most: number, } | { "is": "put_in_missing", 
/**
 * How it is told.
 */
by: PutInBy, } | { "is": "put_in_not_read", 
/**
 * How it is told.
 */
by: PutInBy, 
/**
 * The first characters of it.
 */
typed: string, } | { "is": "put_in_out_of_bounds", 
/**
 * How it is told.
 */
by: PutInBy, } | { "is": "meat_nought" } | { "is": "water_missing" } | { "is": "text_missing" } | { "is": "recipe_text_too_long", 
/**
 * Most bytes.
 */
most: number, } | { "is": "recipe_lines_too_many", 
/**
 * Most lines.
 */
most: number, } | { "is": "no_class_cut" } | { "is": "cut_wants_clock" } | { "is": "no_hour_counts" } | { "is": "ring_too_wide" } | { "is": "no_colour" } | { "is": "too_little_brine" } | { "is": "no_pieces" } | { "is": "pieces_unweighed" } | { "is": "scale_step", 
/**
 * Those that there are.
 */
steps: Array<string>, } | { "is": "no_such_rule" } | { "is": "kept_mixes", 
/**
 * Most of them.
 */
most: number, } | { "is": "learned_cuts" } | { "is": "learned_smoker" } | { "is": "house_hours" } | { "is": "spoon_of_what" } | { "is": "spoon_weights" } | { "is": "no_known_weight" } | { "is": "known_weight_nought" } | { "is": "stock_figures" } | { "is": "tick_form" } | { "is": "thrown_out_form" } | { "is": "too_many_sizes", 
/**
 * Most of them.
 */
most: number, } | { "is": "size_form" } | { "is": "cut_not_listed", 
/**
 * Its first characters.
 */
cut: string, } | { "is": "piece_count", 
/**
 * Most pieces.
 */
most: number, } | { "is": "piece_weight_nought" } | { "is": "mix_too_far_off" } | { "is": "day_form" } | { "is": "too_many_readings", 
/**
 * Most of them.
 */
most: number, } | { "is": "probe_shared", 
/**
 * Most of them.
 */
most: number, } | { "is": "reading_time" } | { "is": "fridge_readings", 
/**
 * Most of them.
 */
most: number, } | { "is": "pieces_too_heavy" } | { "is": "too_many_rests", 
/**
 * Most of them.
 */
most: number, } | TypedWrong | RecipeWrong | LinkWrong;

export type CautionKey = "nitrite-locked" | "weigh-it" | "keep-cold" | "birds-165" | "red-160" | "mince-heat" | "boar-165" | "hare-165" | "jerky-heat" | "cool-fast" | "bacon-fry" | "local-rules" | "raw-hung" | "pack-words" | "brine-once" | "dress-birds" | "dress-deer" | "dress-boar" | "trichinella-test" | "dress-hare" | "vacuum-botulism" | "cold-smoke-time" | "cold-smoke" | "share-deer" | "lead" | "infants" | "thaw" | "label-shot" | "label-raw" | "gift-raw" | "label-vacuum" | "label-shelf" | "label-sale" | "label-sale-other" | "tag-birds" | "tag-us" | "tag-other";

export type CutKey = "mallard-breast" | "teal-breast" | "mallard-leg" | "goose-breast" | "hare-saddle" | "hare-legs" | "fallow-haunch" | "venison-strips" | "boar-belly" | "boar-belly-rind" | "boar-loin" | "duck-breast" | "goose-leg" | "pheasant-breast" | "pheasant-leg" | "wild-turkey-breast" | "wild-turkey-leg" | "grouse-breast" | "partridge-breast" | "quail-breast" | "dove-breast" | "deer-haunch" | "deer-shoulder" | "deer-backstrap" | "deer-top-round" | "deer-bottom-round" | "deer-eye-of-round" | "deer-sirloin-tip" | "roe-backstrap" | "elk-backstrap" | "elk-round" | "moose-backstrap" | "moose-round" | "antelope-backstrap" | "antelope-haunch" | "rabbit-saddle" | "rabbit-legs" | "boar-haunch" | "boar-shoulder" | "bear-roast" | "hare-legs-boned";

export type GameKey = "mallard-breast" | "american-black-duck-breast" | "northern-pintail-breast" | "gadwall-breast" | "american-wigeon-breast" | "northern-shoveler-breast" | "blue-winged-teal-breast" | "green-winged-teal-breast" | "teal-any-breast" | "wood-duck-breast" | "canvasback-breast" | "redhead-breast" | "ring-necked-duck-breast" | "scaup-lesser-breast" | "scaup-greater-breast" | "common-goldeneye-breast" | "bufflehead-breast" | "ruddy-duck-breast" | "long-tailed-duck-breast" | "common-merganser-breast" | "greater-white-fronted-goose-breast" | "lesser-snow-goose-breast" | "rosss-goose-breast" | "cackling-goose-breast" | "cackling-goose-small-breast" | "lesser-canada-goose-breast" | "large-canada-goose-breast" | "canada-gander-breast" | "canada-goose-breast" | "brant-breast" | "ring-necked-pheasant-cock-breast" | "ring-necked-pheasant-hen-breast" | "pheasant-cock-farmed-breast" | "pheasant-hen-farmed-breast" | "ruffed-grouse-breast" | "chukar-breast" | "northern-bobwhite-breast" | "mourning-dove-breast" | "wild-turkey-hen-breast" | "wild-turkey-tom-breast" | "mallard-leg" | "canada-goose-leg" | "pheasant-leg" | "goose-any-breast" | "turkey-breast" | "deer-backstrap" | "deer-eye-of-round" | "deer-top-round" | "deer-bottom-round" | "deer-sirloin-tip" | "fallow-haunch" | "roe-backstrap" | "elk-backstrap" | "boar-belly" | "mule-deer-buck" | "mule-deer-doe" | "mule-deer-skinned" | "elk-bull" | "elk-cow" | "elk-skinned" | "white-tailed-deer" | "white-tailed-live" | "deer-live" | "moose-live" | "bear-live" | "boar-live" | "hare-legs" | "hare-legs-boned" | "hare-saddle" | "mallard-lean" | "pheasant-breast" | "mallard-giblets" | "mallard-skin" | "pheasant-dressed" | "dabbler-live" | "diver-live" | "goose-live" | "grouse-live" | "dove-live" | "pronghorn" | "cottontail";

export type FinishKey = "finish-jerky" | "finish-smoke" | "finish-cook";

export type WeighedKey = "carcass" | "field_dressed" | "hide_on" | "live" | "skinned";

export type IngredientKey = "cure-1" | "cure-2" | "cure-nitrite-salt" | "cure-sweet" | "cure-made" | "pure-sodium-nitrite" | "pure-potassium-nitrite" | "pure-sodium-nitrate" | "pure-potassium-nitrate" | "cure-packet" | "cure-vegetable" | "salt-table" | "salt-pickling" | "salt-sea-fine" | "salt-kosher-dense" | "salt-kosher-flake" | "salt-flake-large" | "sugar-brown" | "sugar-white" | "sugar-turbinado" | "sugar-maple" | "honey" | "syrup-maple" | "molasses" | "pepper-black-cracked" | "pepper-black-ground" | "pepper-black-whole" | "pepper-white" | "pepper-cayenne" | "juniper-crushed" | "juniper-whole" | "mustard-seed" | "mustard-ground" | "garlic-powder" | "garlic-fresh" | "onion-powder" | "paprika" | "coriander-seed" | "thyme-dried" | "rosemary-dried" | "sage-ground" | "bay-crumbled" | "allspice-ground" | "clove-ground" | "ginger-ground" | "mace-ground" | "nutmeg-ground" | "cinnamon-ground" | "fennel-seed" | "celery-seed" | "chili-powder" | "marjoram-dried" | "water" | "vinegar-cider" | "soy-sauce" | "worcestershire" | "wine-red" | "apple-juice" | "beer" | "sugar-powdered" | "syrup-corn-dark" | "syrup-corn" | "anise-seed" | "basil-dried" | "basil-ground" | "caraway-seed" | "cardamom-ground" | "coriander-leaf-dried" | "cumin-seed" | "curry-powder" | "dill-seed" | "dill-weed-dried" | "fenugreek-seed" | "oregano-dried" | "oregano-ground" | "parsley-dried" | "poppy-seed" | "poultry-seasoning" | "pumpkin-spice" | "saffron" | "savory-ground" | "tarragon-dried" | "tarragon-ground" | "thyme-ground" | "turmeric" | "mustard-prepared" | "thyme-fresh" | "vinegar-distilled" | "horseradish" | "rosemary-fresh" | "vinegar-wine" | "vinegar-balsamic" | "sazon" | "taco-seasoning" | "chili-seasoning" | "ginger-fresh" | "onion-fresh" | "sesame-seed" | "baking-powder" | "baking-soda" | "cream-of-tartar" | "yeast" | "gelatin" | "milk-powder" | "milk-powder-instant" | "egg-white-dried" | "lard" | "oil-olive" | "fish-sauce" | "hot-sauce" | "tamari" | "lemon-juice" | "orange-juice" | "spirits" | "wine-dessert" | "wine-table" | "wine-white" | "allspice-whole" | "clove-whole" | "star-anise" | "cinnamon-stick" | "chilli-flakes" | "pepper-pink" | "pepper-green" | "mustard-crushed" | "salt-mineral-pink" | "salt-rock" | "fat-pork";

export type AllergenKey = "barley" | "celery" | "egg" | "fish" | "milk" | "mustard" | "sesame" | "soy" | "sulphites" | "wheat";

export type ProfileKey = "us-home" | "us-plant" | "ca" | "uk" | "eu" | "codex" | "anz";

export type KeepingKey = "smoked-cured-bird-cold" | "smoked-cured-any-cold" | "smoked-any-cold" | "cooked-any-cold" | "raw-red-cold" | "raw-bird-cold" | "raw-any-cold" | "raw-minced-any-cold" | "any-any-vacuum" | "smoked-cured-any-frozen" | "smoked-any-frozen" | "cooked-any-frozen" | "raw-red-frozen" | "raw-bird-frozen" | "raw-any-frozen" | "raw-minced-any-frozen";

export type SlipKey = "tablespoon" | "teaspoon" | "ounce" | "gram" | "us-gallon" | "imperial-gallon" | "per-pound" | "per-kilogram" | "no-1-for-sweet" | "sweet-for-no-1";

export type TableKey = "limits" | "cuts" | "game" | "diffusion" | "equalise" | "measures" | "spoons" | "accelerators" | "targets" | "heat" | "parasite-heat" | "parasite-cold" | "cooling" | "cure-cap" | "usual-hours" | "keeping" | "trouble-sources";

export type WhichKey = "crushed_or_whole" | "dried_fresh_or_ground" | "dried_or_fresh" | "fresh_or_powder" | "ground_mixed_or_flakes" | "ground_or_flakes" | "ground_or_fresh" | "ground_or_stick" | "ground_or_whole" | "leaves_or_ground" | "red_or_white" | "seed_or_leaf" | "weed_or_seed" | "which_coarse_salt" | "which_cure" | "which_e250" | "which_flake_salt" | "which_kosher_salt" | "which_mustard" | "which_nitrate" | "which_nitrite_salt" | "which_pepper" | "which_pink_salt" | "which_salt" | "which_sea_salt" | "which_vinegar" | "whole_or_crushed";

export type MeasureKey = "australian_tablespoon" | "clove" | "cup_250_ml" | "dessertspoon" | "fl_oz_1_5" | "fl_oz_us_4" | "gill" | "imperial_cup" | "imperial_fluid_ounce" | "imperial_gallon" | "imperial_gill" | "imperial_pint" | "imperial_quart" | "loose" | "metric_cup" | "metric_tablespoon" | "metric_teaspoon" | "ml_190" | "ml_25" | "ml_30" | "packed" | "spoon_15_ml" | "spoon_5_ml" | "tablespoon" | "teaspoon" | "us_cup" | "us_fluid_ounce" | "us_gallon" | "us_gill" | "us_pint" | "us_quart";

/** The answer to each question. */
export interface Answers {
  read: ReadValues;
  tables: Tables;
  starters: Starters;
  pieces: PieceSheet;
  card: RecipeCard;
  turned: Opened;
  weigh_out: WeighSheet;
  draft: Draft;
  check_dose: Verdict;
  standing: StandingSheet;
  next: NextList;
  link: Link;
  open_link: Opened;
  check: Checked;
  read_recipe: Reading;
  fire_log: FireSheet;
  plan_bag: BagSheet;
  trouble: Trouble;
  plan_back: Back;
  calendar: Calendar;
  labels: Labels;
  brine: BrineSheet;
  spoon: SpoonSheet;
  scale: ScaleSheet;
  stock: StockSheet;
  cure_clock: CureClock;
  learn_cut: Finding;
  larder: LarderSheet;
  ledger: Ledger;
  sources: Sources;
}
