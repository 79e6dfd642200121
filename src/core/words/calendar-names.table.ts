// Made by npm run words; a test holds it equal.
// Source: the locales of date-fns that each language's file names.

import type { CalendarNames } from "./calendar-names";

/** By a language's English name. */
export const CALENDAR_NAMES: Readonly<Record<string, CalendarNames>> = {
  English: {
    months:
      "january, jan; february, feb; march, mar; april, apr; may; june, jun; july, jul; august, aug; september, sep; october, oct; november, nov; december, dec",
    weekdays: "monday; tuesday; wednesday; thursday; friday; saturday; sunday",
    shortWeekdays: "mon, tue, wed, thu, fri, sat, sun",
  },
  French: {
    months:
      "janvier, janv; fevrier, fevr; mars; avril, avr; mai; juin; juillet, juil; aout; septembre, sept; octobre, oct; novembre, nov; decembre, dec",
    weekdays: "lundi; mardi; mercredi; jeudi; vendredi; samedi; dimanche",
    shortWeekdays: "lun, mer, jeu, ven, sam, dim",
  },
  Indonesian: {
    months:
      "januari, jan; februari, feb; maret, mar; april, apr; mei; juni, jun; juli, jul; agustus, agt; september, sep; oktober, okt; november, nov; desember, des",
    weekdays: "senin; selasa; rabu; kamis; jumat; sabtu; minggu",
    shortWeekdays: "sen, sel, rab, kam, jum, sab, min",
  },
  Portuguese: {
    months:
      "janeiro, jan; fevereiro, fev; marco, mar; abril, abr; maio, mai; junho, jun; julho, jul; agosto, ago; setembro, set; outubro, out; novembro, nov; dezembro, dez",
    weekdays:
      "segunda feira; terca feira; quarta feira; quinta feira; sexta feira; sabado; domingo",
    shortWeekdays: "seg, ter, qua, qui, sex, sab, dom",
  },
  Spanish: {
    months:
      "enero, ene; febrero, feb; marzo, mar; abril, abr; mayo, may; junio, jun; julio, jul; agosto, ago; septiembre, sep; octubre, oct; noviembre, nov; diciembre, dic",
    weekdays: "lunes; martes; miercoles; jueves; viernes; sabado; domingo",
    shortWeekdays: "lun, mie, jue, vie, sab, dom",
  },
};
