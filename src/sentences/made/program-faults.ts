// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list } from "../runtime";

export const cantWriteCopy = (d: { readonly name: string | number; readonly why: string | number }): string => d.name + " can't be written (" + d.why + "). Is it open in another program?";

export const forReport = (d: { readonly word: string | number; readonly words: string | number }): string => d.word + " belongs to the report in the terminal: npm run report -- " + d.words;

export const needsApart = (d: { readonly found: string | number }): string => "--apart needs \"one name=another name\". Found \"" + d.found + "\"";

export const needsColumn = (d: { readonly found: string | number }): string => "--column needs \"our name=their header\". Found \"" + d.found + "\"";

export const needsDay = (d: { readonly found: string | number }): string => "--as-of needs a day as YYYY-MM-DD. Found \"" + d.found + "\"";

export const needsLocale = (d: { readonly found: string | number }): string => "--locale needs a code such as en_GB or fr_FR. Found \"" + d.found + "\"";

export const needsNumber = (d: { readonly option: string | number; readonly most: string | number; readonly found: string | number }): string => d.option + " needs a whole number from 0 to " + d.most + ". Found \"" + d.found + "\"";

export const needsWord = (d: { readonly found: string | number }): string => "--word needs \"our name=their word\". Found \"" + d.found + "\"";

export const needsZone = (d: { readonly found: string | number }): string => "--zone needs a name such as Asia/Kolkata. Found \"" + d.found + "\"";

export const notBuilt = (d: { readonly file: string | number }): string => "The add-in is not built. " + d.file + " is missing (npm run build)";

export const oneFile = (d: { readonly files: readonly string[] }): string => "Name one file at a time. Found " + list(d.files);

export const portTaken = (d: { readonly port: string | number }): string => "Port " + d.port + " can't be used. Leave out --port to get a free one";

export const unknownWords = (d: { readonly why: string | number }): string => d.why + " (--help lists the options)";
