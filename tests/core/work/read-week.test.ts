import { addDays, format, getISODay, parseISO } from "date-fns";
import { describe, expect, it } from "vitest";
import { daysLater } from "../../../src/core/dates/civil-day";
import { isoDay } from "../../../src/core/dates/day-text";
import { hundredthsOn } from "../../../src/core/work/crew";
import { readWeek, weekOff } from "../../../src/core/work/read-week";
import { day } from "../../support/days";

/**
 * The days on which somebody works, written down before the code as supervisors write them on a list
 * (invented, from memory, no source). Monday first: 8 a day, 4 half a day, . none.
 */
const WEEKS: readonly (readonly [written: string, week: string])[] = [
  ["Mon–Fri", "88888.."],
  ["Mon-Fri", "88888.."],
  ["mon - fri", "88888.."],
  ["Mo-Fr", "88888.."],
  ["M-F", "88888.."],
  ["Monday to Friday", "88888.."],
  ["from Monday to Saturday", "888888."],
  ["Mon to Sat", "888888."],
  ["Mondays through Thursdays", "8888..."],
  ["weekdays", "88888.."],
  ["Weekdays only", "88888.."],
  ["Tue, Thu", ".8.8..."],
  ["Tues & Thurs", ".8.8..."],
  ["Tue/Thu", ".8.8..."],
  ["Tuesday and Thursday", ".8.8..."],
  ["Tue\nThu", ".8.8..."],
  ["only Wednesdays", "..8...."],
  ["every Friday", "....8.."],
  ["Sat–Mon", "8....88"],
  ["weekends", ".....88"],
  ["Mon, Wed–Fri", "8.888.."],
  ["not Sunday", "888888."],
  ["all but Sunday", "888888."],
  ["every day except Wed and Sun", "88.888."],
  ["Every day", "8888888"],
  ["daily", "8888888"],
  ["7 days", "8888888"],
  ["Sunday off", "888888."],
  ["off Sundays", "888888."],
  ["Mon–Sat, not Wed", "88.888."],
  ["Mon-Fri, Sat half", "888884."],
  ["Mon–Fri; Sat half day", "888884."],
  ["Mon–Fri and Sat morning", "888884."],
  ["Mon–Fri, Sat a.m.", "888884."],
  ["mornings Mon–Wed", "444...."],
  ["Mon–Fri mornings", "44444.."],
  ["mornings only", "4444444"],
  ["half days", "4444444"],
  ["Mon–Thu, Fri 6 h", "88886.."],
  ["Mon-Thu; Fri (6h)", "88886.."],
  ["no Sundays", "888888."],
  ["No weekends", "88888.."],
  ["Mon to Fri (no Wed)", "88.88.."],
  ["never on Sundays", "888888."],
  ["doesn't work Mondays", ".888888"],
  ["all week", "8888888"],
  ["weekdays + Sat", "888888."],
  ["Mon-Fri 8h, Sat 4h", "888884."],
  // French
  ["jamais le dimanche", "888888."],
  ["ne travaille pas le lundi", ".888888"],
  ["absent le mercredi", "88.8888"],
  ["tous les jours ouvrés", "88888.."],
  ["sauf sam. et dim.", "88888.."],
  ["L à V", "88888.."],
  ["du mardi au samedi", ".88888."],
  ["lundi au vendredi", "88888.."],
  ["du lundi au vendredi", "88888.."],
  ["lun.-ven.", "88888.."],
  ["lun–ven, sam matin", "888884."],
  ["mar, jeu", ".8.8..."],
  ["sauf dimanche", "888888."],
  ["tous les jours sauf le dimanche", "888888."],
  ["pas le mercredi", "88.8888"],
  ["en semaine", "88888.."],
  ["mercredi après-midi", "..4...."],
  // Spanish
  ["lunes a viernes", "88888.."],
  ["de lunes a sábado", "888888."],
  ["L-V", "88888.."],
  ["lun-vie", "88888.."],
  ["martes y jueves", ".8.8..."],
  ["mar, jue", ".8.8..."],
  ["todos los días menos domingo", "888888."],
  ["excepto domingos", "888888."],
  ["lunes a viernes, sábado medio día", "888884."],
  ["entre semana", "88888.."],
  ["no domingos", "888888."],
  ["domingo no", "888888."],
  ["no lunes", ".888888"],
  ["lunes a sábado, no miércoles", "88.888."],
  ["no trabaja los lunes", ".888888"],
  ["descansa el jueves", "888.888"],
  ["todos menos domingo", "888888."],
  ["lunes-viernes; sábado 4 horas", "888884."],
  ["L a V", "88888.."],
  // Portuguese
  ["não aos domingos", "888888."],
  ["não trabalha na quarta", "88.8888"],
  ["seg a sex e no sábado de manhã", "888884."],
  ["segunda a sexta, no sábado meio período", "888884."],
  ["nas terças e quintas", ".8.8..."],
  ["folga no domingo", "888888."],
  ["todo dia menos domingo", "888888."],
  ["exceto fins de semana", "88888.."],
  ["dias de semana", "88888.."],
  ["segunda a sexta", "88888.."],
  ["segunda-feira a sexta-feira", "88888.."],
  ["seg-sex", "88888.."],
  ["2ª a 6ª", "88888.."],
  ["terça e quinta", ".8.8..."],
  ["todos os dias exceto domingo", "888888."],
  ["menos aos domingos", "888888."],
  ["seg–sex, sábado de manhã", "888884."],
  ["segunda a sexta, sábado meio dia", "888884."],
  // Indonesian
  ["Senin-Jumat", "88888.."],
  ["Senin s/d Sabtu", "888888."],
  ["Senin sampai Jum'at", "88888.."],
  ["sen–jum", "88888.."],
  ["Selasa dan Kamis", ".8.8..."],
  ["kecuali Minggu", "888888."],
  ["setiap hari kecuali hari Minggu", "888888."],
  ["Senin–Jumat, Sabtu setengah hari", "888884."],
  ["hari kerja", "88888.."],
  ["tidak hari Minggu", "888888."],
  ["Minggu tidak", "888888."],
  ["hari Minggu libur", "888888."],
  ["Senin, Rabu dan Jumat", "8.8.8.."],
  ["Sen s.d. Jum'at", "88888.."],
  ["bukan hari Minggu", "888888."],
];

const hours = (week: ReturnType<typeof readWeek>) =>
  week === null || !Array.isArray(week)
    ? week
    : week
        .map((part) => ("share" in part ? part.share * 8 : part.hundredths / 100) || ".")
        .join("");

describe("the days on which somebody works", () => {
  it.each(WEEKS)("%j", (written, week) => {
    expect(hours(readWeek(written))).toBe(week);
  });

  // Read one way it would promise hours that are not there.
  it.each([
    ["every other Friday"],
    // Not on Sundays to one, on Sundays to his neighbour.
    ["no domingo"],
    ["no sábado"],
    ["6 days"],
    ["M/W/F"],
    ["first Monday of the month"],
    ["5 days"],
    ["Mon–Fri 7-15"],
    ["Tue, Thu mornings"],
    ["Sat, Sun off"],
    ["Mon–"],
    ["by agreement"],
    ["not"],
    ["Monday to tea"],
    ["Fri 30 h"],
  ])("%j is not read", (written) => {
    expect(readWeek(written)).toBeNull();
  });

  it("are told of days off in the same words", () => {
    const off = (written: string) => hours(weekOff(written));
    expect(off("Sunday")).toBe("888888.");
    expect(off("Sat & Sun")).toBe("88888..");
    expect(off("Sat afternoon; Sun")).toBe("888884.");
    expect(off("weekends")).toBe("88888..");
    // Whichever language it is, this one is off on Sundays.
    expect(off("no domingo")).toBe("888888.");
    expect(off("aos domingos")).toBe("888888.");
    expect(off("nos fins de semana")).toBe("88888..");
    expect(off("el domingo")).toBe("888888.");
    expect(off("Tue, Thu mornings")).toBeNull();
  });

  // date-fns says which weekday a day is.
  it("hold on every day of a year, by another calendar", () => {
    for (const [written, week] of WEEKS) {
      const parts = readWeek(written) ?? [];
      const person = {
        ...{ name: "Ana", skills: null, hundredthsADay: 800, off: [] },
        week: parts.map((part) => ("share" in part ? part.share * 800 : part.hundredths)),
      };
      const from = day("2026-11-25");
      for (let at = 0; at < 366; at += 1) {
        const date = addDays(parseISO("2026-11-25"), at);
        expect(isoDay(daysLater(from, at))).toBe(format(date, "yyyy-MM-dd"));
        const sign = week[getISODay(date) - 1];
        expect(hundredthsOn(person, daysLater(from, at))).toBe(
          sign === "." ? 0 : Number(sign) * 100,
        );
      }
    }
  });
});
