import { minifySync } from "@swc/core";

/**
 * A script once more made smaller, by a compressor that sees through more than the bundler's own: the
 * spreadsheet loads every byte for each formula. Comments go; names of the top level stay.
 *
 * @param ascii whether all but ASCII is written by escapes
 */
export function smaller(code: string, { ascii }: { readonly ascii: boolean }): string {
  return minifySync(code, {
    // Functions become arrows and lose parameters that they don't use: unsafe only for those that are
    // called by `new` or asked how many they take. Those called by `new` are classes here.
    compress: {
      ecma: 2020,
      passes: 2,
      unsafe_arrows: true,
      unsafe_methods: true,
      keep_fargs: false,
    },
    mangle: true,
    ecma: 2020,
    module: false,
    format: { comments: false, ecma: 2020, asciiOnly: ascii },
  }).code;
}
