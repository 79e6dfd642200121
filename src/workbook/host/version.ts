/** Put in by the build, from package.json. */
declare const ADD_IN_VERSION: string;

/** The version of the script that runs, such as "0.2.0". */
export function scriptVersion(): string {
  return ADD_IN_VERSION;
}
