/** True in the build for a host, false in the single file. The build puts the value in, and drops what is dead. */
declare const HOSTED: boolean;

/** Version of the page and hash of what it was built of, `0.1.0-1a2b3c4d`. */
declare const RELEASE: string;

/** The address of the file in the build for a host, its bytes in the single file. */
declare module '*.wasm' {
  const source: string | Uint8Array<ArrayBuffer>;
  export default source;
}

/** The single file alone: the core's bytes, when they are unpacked. */
declare var core: Uint8Array<ArrayBuffer>;
