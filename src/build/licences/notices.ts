import type { BundledPackage } from "./bundled-packages";
import { sourceNotices } from "./source-notices";

/** Our own notice. */
export const OWN_NOTICE = [
  "Copyright 2026 the authors of Nursery batches.",
  "Licensed under the Apache License, Version 2.0 (www.apache.org/licenses/LICENSE-2.0), without",
  "warranties or conditions of any kind.",
];

/** Where the text of a licence can be read. No "//": it would look like an address that is asked. */
const LICENCE_PLACES: Readonly<Record<string, string>> = {
  "Apache-2.0": "www.apache.org/licenses/LICENSE-2.0",
  "BSL-1.0": "www.boost.org/LICENSE_1_0.txt",
};

/**
 * The notices that go with a built file, in short: whose code it holds, under which licence, and what
 * each asks to be kept. The file is pasted alone, so they stand in it.
 *
 * @returns lines without the signs of a comment
 */
export function shortNotices(packages: readonly BundledPackage[]): readonly string[] {
  if (packages.length === 0) return OWN_NOTICE;
  const others = byLicence(packages).flatMap(([licence, alike]) => [
    "",
    `${licence}${addressesOf(licence)}: ${namesOf(alike)}`,
    ...distinct(alike.flatMap(({ noticeTexts }) => noticeTexts)),
    // What has no place to be read at is given whole, each text once.
    ...(addressesOf(licence) === "" ? distinct(alike.flatMap((one) => one.licenceTexts)) : []),
  ]);
  const earlier = sourceNotices(packages.flatMap(({ sources }) => sources)).flatMap(
    ({ copyrights, terms }) => ["", ...copyrights, terms],
  );
  return [
    ...OWN_NOTICE,
    "It holds code of the packages below, made smaller.",
    ...others,
    ...earlier,
  ];
}

/** The same with the whole text of every licence, each once, for the release. */
export function fullNotices(packages: readonly BundledPackage[]): string {
  const byText = new Map<string, BundledPackage[]>();
  for (const one of packages) {
    for (const text of one.licenceTexts) byText.set(text, [...(byText.get(text) ?? []), one]);
  }
  const texts = [...byText].map(
    ([text, alike]) =>
      `${alike.map(({ name, version }) => `${name} ${version}`).join(", ")}\n\n${text}`,
  );
  return `${[shortNotices(packages).join("\n"), ...texts].join(`\n\n${"-".repeat(72)}\n\n`)}\n`;
}

function byLicence(
  packages: readonly BundledPackage[],
): readonly (readonly [licence: string, alike: readonly BundledPackage[]])[] {
  const licences = distinct(packages.map(({ licence }) => licence));
  return licences.map((one) => [one, packages.filter(({ licence }) => licence === one)]);
}

/** " (place, place)"; nothing where one of the licences has no known place. */
function addressesOf(expression: string): string {
  const addresses = expression.split(" AND ").map((licence) => LICENCE_PLACES[licence]);
  return addresses.includes(undefined) ? "" : ` (${addresses.join(", ")})`;
}

/** Names with a scope that several share said once: "@scope: a, b; c". */
function namesOf(packages: readonly BundledPackage[]): string {
  const scopes = distinct(packages.map(({ name }) => scopeOf(name)));
  return scopes
    .map((scope) => {
      const names = packages
        .filter(({ name }) => scopeOf(name) === scope)
        .map(({ name }) => name.slice(scope.length));
      return scope === "" ? names.join(", ") : `${scope} ${names.join(", ")}`;
    })
    .join("; ");
}

function scopeOf(name: string): string {
  return name.startsWith("@") ? name.slice(0, name.indexOf("/") + 1) : "";
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
