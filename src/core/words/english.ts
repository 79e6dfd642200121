import type { LanguageText } from "./language-text";

/** How to change or add words: language-text.ts. */
export const english: LanguageText = {
  language: "English",
  locales: "en-GB, en-US",

  // Days: spellings beside those of the locales, then small words in a day
  months: {
    february: "febr",
    september: "sept",
  },
  weekdays: {
    monday: "mon",
    tuesday: "tue, tues",
    wednesday: "wed",
    thursday: "thu, thur, thurs",
    friday: "fri",
    saturday: "sat",
    sunday: "sun",
  },
  early: "early, beginning of, start of",
  middle: "mid, middle of",
  late: "late, end of, end",
  week: "week, wk",
  dateFillers: "of, the, st, nd, rd, th",
  dayLetters: "d, m, y",
  upTo: "to, until, till",

  // Headers of the records
  dayWords: "date, day, dates, on, when, dt",
  countWords: `
    no, nos, number, qty, quantity, count, counted, total, pcs, plants, nr, num, how many, n,
    amount`,
  headerFillers: "of, the, made, done, in, at, for",
  facts: {
    batch: `
      batch, batch no, batch number, batch id, batch name, batch code, lot, lot no, lot number,
      batch ref, plot no, tag, tag no`,
    fromLot: `
      from lot, from batch, parent lot, parent batch, rootstock lot, stock lot, taken from,
      seedling lot, source lot, rootstock batch, mother lot`,
    variety: "variety, var, clone, cultivar, scion variety, scion clone, grafted variety",
    rootstock: `
      rootstock, stock, rootstock variety, root stock, rootstock type, rootstock clone, understock`,
    crop: "crop, crops, species, kind of crop",
    method:
      "method, graft method, grafting method, type of graft, graft type, technique, propagation method",
    place: `
      place, location, bay, bed, bench, site, position, greenhouse, g house, glasshouse,
      shade house, block, house, tunnel, net house, stands in`,
    grafter: "grafter, grafted by, budder, grafter name, name of grafter",
    scionSource: `
      scion source, scions from, budwood source, scion garden, budwood from, source of scion,
      source of scions, scion origin, mother tree, mother plot`,
    culled: `
      culled, culls, dead, died, losses, loss, discarded, thrown out, deaths, mortality, rejected,
      rejects`,
    dispatched: "dispatched, sold, delivered, sent out, despatched, issued, sales, shipped",
    closed: "closed, finished, batch closed, closed on, completed",
    note: "note, notes, remark, remarks, comment, comments, observations",
    eventDay: "day, date, event day, event date, when",
    eventStep: "step, job, event, activity, task, operation, stage, what was done, work done",
    eventCount: "count, number, qty, quantity, plants, no, how many, no of plants",
    eventPerson: "person, by, who, worker, done by, staff, recorded by, by whom",
  },
  steps: {
    sowing: {
      name: "sowing, sow, seeding",
      day: "sown, sowing date, sown on, date sown, planted, sowing day, date of sowing",
      count: "seeds sown, seed sown, seeds, no sown, qty sown, sown qty, number sown",
    },
    germination: {
      name: "germination, germ, emergence, emerged, came up, coming up",
      day: "germination day, germination date, date germinated, germinated on",
      count: "germinated, seedlings, seedlings up, no germinated, emerged plants",
    },
    grafting: {
      name: "grafting, graft, grafted, budding, budded",
      day: "grafted on, grafting date, date grafted, graft date, budded on",
      count: `
        grafts made, grafts, no grafted, plants grafted, qty grafted, number grafted, buds made,
        grafts done, total grafts`,
    },
    "first release": {
      name: "first release, wrap opened, untying, wrap release, wrap released, tape off",
      day: "first release day, first opening, wrap opened on, release date",
    },
    "bud break": {
      name: "bud break, budbreak, buds moving, sprouting, bud burst, buds move",
      day: "bud break day, date of bud break",
      count: "sprouted, sprouts",
    },
    "take count": {
      name: "take count, take, survival count, success count, take assessment",
      day: "take count day, take date, date counted, counted on, date of take count",
      count: `
        takes, taken, live grafts, grafts alive, successful grafts, successes, took, no taken,
        alive, survived, living grafts, success`,
    },
    "first flush": {
      name: "first flush, flush, new flush",
      day: "first flush day, flush date",
    },
    "flush hardening": {
      name: "flush hardened, flush hardening, hardened, hardening",
      day: "hardened on, hardening date",
    },
    branching: {
      name: "branching, branched",
      day: "branched on",
    },
    "union closed": {
      name: "union closed, union, union healed, graft union closed",
      day: "union closed on",
    },
    ready: {
      name: "ready, ready for sale, saleable, fit for sale",
      day: "ready on, ready date, date ready, ready day",
      count: "ready plants, saleable plants, plants ready, no ready",
    },
  },
  scionsCut: `
    scions cut, scions cut on, scion cut, scion cut on, scion cutting day, scion cutting date,
    scions collected, scions collected on, scion collection date, budwood cut, budwood cut on`,

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "sow, sown, seeding, planted, struck",
    seed: "seed, nut, nuts, bean, stone, pip, pips",
    begin: "start, begin, began",
    germinate: "germ, emerg, seedling, up, came",
    container: "bag, bags, poly, pot, pots, tube, sleeve",
    pot: "pott, repot, bagg, transplant, prick, lined",
    graft: "graft, grft, budd, inarch",
    bud: "bud, buds",
    loosen: "releas, loosen, open, unti, slit",
    takeOff: "unwrap, remov, off, untap",
    wrap: "tape, wrap, strip, tie, ties, film, cap, caps, plastic",
    burst: "sprout, burst, break, push, swell, swoll",
    shoot: "shoot",
    flush: "flush",
    union: "union, knit, heal, callus",
    cutBack: "lopp, topp, forced, forcing, bent, bend, headed, cutback",
    harden: "hard, sun, acclimat",
    alive: "alive, live, living, surviv",
    take: "take, took, succ, strike, stuck",
    check: "check, assess, inspect, score, review",
    ready: "ready, saleab, good, sellab, marketab, plantab, fit",
    gone: "sold, sale, despatch, disp, ship, deliver, gone, issued, sent, collected",
    dead: "dead, died, dump, cull, loss, lost, reject, discard, fail, thrown, binned, scrapp",
    rest: "balance, left, remain, reserv, due, available, promis",
    cutting: "cutting, slip",
    root: "rooted, rooting",
    cut: "cut, collect, harvest",
    scion: "scion, budwood, wood, stick, budstick",
    garden: "garden, mother, donor",
    source: "from, source, origin, provenance",
    batch: "batch, lot, lots",
    code: "id, code, ref, reference, job, tag, label",
    variety: "variet, var, clone, cultivar, cv, cvar, budline, genotyp, selection",
    stock: "rootstock, stock, rs, rstock, understock",
    place: "place, bench, bed, bay, house, block, tunnel, location, loc, plot, section, table",
    by: "by",
    grafter: "grafter, budder, knife",
    person: "who, operator, worker, staff, team, gang, person, initials",
    kind: "type, method, kind, way, technique, technic, style",
    crop: "crop, species",
    customer: "cust, client, buyer, farmer, grower, destination",
    closed: "closed",
    note: "note, remark, comment",
    measure: `
      cm, mm, pct, percent, height, ht, caliper, diameter, dia, length, price, cost, weight,
      temp, hours, hrs, sign, phone, unit, weather, rate, age, ratio`,
    aside: "set, put, made, done, nos, new, name, all",
    meantFor: "for",
    dayUnit: "d, day, days",
    weekUnit: "wk, wks, week",
    monthUnit: "mth, mths, month, mo",
    first: "i, first, early",
    later: "ii, iii, second, third, again, later, last",
  },

  // Headers and names of the other tables
  name: "name",
  from: "from",
  tables: {
    orders: {
      order: "order, order no, order number, order id, order name, order ref, order code",
      customer: "customer, client, buyer, for, customer name, ordered by, farmer",
      variety: "variety, varieties, clone, cultivar, var, variety wanted",
      wanted: `
        wanted, plants wanted, plants, quantity, qty, number, ordered, amount, plants ordered,
        quantity ordered, no plants, no of plants, number of plants`,
      by: `
        by, wanted by, needed by, due, due by, due date, ready by, date wanted, delivery,
        delivery date, deliver by, date needed, deadline, day, date`,
      delivered: "delivered, plants delivered, given, handed over, supplied, dispatched",
      closed: "closed, done, complete, completed, cancelled, canceled, settled",
    },
    crew: {
      person: "grafter, employee, crew",
      tasks: "tasks, task, steps, step, skills, skill, work, can do, does",
      hours: "hours a day, hours per day, hours day, hours, daily hours, h, hrs",
      offFrom: "off from, away from, leave from, absent from, holiday from, off",
      offTo: "off to, away to, leave to, absent to, holiday to, off until, away until",
    },
    closedDays: {
      day: "day, days, date, closed, closed on, closed from, holiday, weekday",
      to: "to, until, closed to, closed until, last day",
    },
    prices: {
      item: "item, items, material, materials, what, article, product, supply, thing",
      price: "price, unit price, price each, cost, unit cost, rate",
      per: "per, unit, for, price per, unit of measure",
    },
    places: {
      holds: "holds, capacity, room, room for, space, max, maximum, plants, fits",
    },
    timetable: {
      method: "method, crop, crop and method",
      step: "step, stage, task",
      after: "after, after step, counted from, days after",
      from: "from day, from, earliest, earliest day",
      usual: "usual day, usual, usually, days, day",
      by: "by day, by, latest, latest day",
      counted: "counted, count",
      kept: "kept of 100, kept, kept per cent, kept percent",
      perPersonHour: "per person hour, per hour, plants per person hour, plants per hour",
      needs: "needs, materials, needs per plant",
      caution: "caution, cautions, safety",
      source: "source, sources",
    },
  },
  tabs: {
    orders: "orders, order, open orders, order book, order list",
    crew: "crew",
    closedDays: "closed days, days closed",
    perhapsClosedDays: "public holidays, holidays, closed",
    places: "places",
    prices: "prices",
  },

  // Words in cells
  yes: "yes, y, true, x, done, closed, finished, ok",
  no: "no, n, false, open, not yet",
  nothing: "-, --, n a, na, nil, none, ?, tbc, not counted, not yet, pending",
  ditto: "ditto, do, same, same as above, as above",
  totals: "total, totals, subtotal, sub total, grand total, sum, overall",
  about: "about, approx, approximately, around, circa, ca, c, some, est, over",
  dozen: "doz, dozen, dozens, dz",
  trays: "tray, trays, row, rows, box, boxes, bed, beds, bundle, bundles",
  of: "of",
  percent: "per cent, percent, pct",
  moved: "moved, move, shifted, moved to",
  splitOff: "split off, split, given, given to, divided, taken out",
  and: "and",
  either: "or",
  anyVariety: `
    any, any variety, any varieties, any clone, any kind, whichever, no preference, variety, varieties, clone`,
  everything: "all, any, everything, all tasks",
  work: `
    hour, hours, hour of work, hours of work, labour, labor, work, person hour, person hours,
    man hour, man hours, labour hour, labor hour, wage, wages`,
  per: "per",
  seedItems: "seed, seeds, pod, pods, nut, nuts, stone, stones, fruit, fruits",

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "cleft, clef, cl",
    wedge: "wedge, top, top wedge, apical, terminal",
    side: "side, lateral, side cleft",
    veneer: "veneer, veneered, side veneer",
    approach: "approach, inarch, inarching, inarched",
    patch: "patch, patchbud, patch bud, patchbudding, patchbudded, p bud, brown",
    green: "green, grn, gb, green patch, green bud, greenbud",
    shield: "t, tbud, shield, t shield, inverted t, t inverted",
    chip: "chip, chipbud, chipbudding, chipbudded",
    softwood: "softwood, soft wood, softwd, swg",
    stone: "stone, epicotyl",
    hypocotyl: "hypocotyl, hypo cotyl, nurse stage",
    cutting: `
      cutting, cuttings, ctg, ctgs, stem cutting, stem cuttings, rooted cutting, rooted cuttings,
      single node cutting, single node cuttings`,
    seedling: "seedling, seedlings, seed, from seed, ungrafted, not grafted",
  },
  budding: "bud, buds, budding, budded",
  graftFillers: "graft, grafts, grafted, grafting, gr, grft, of, on, by, the, plants",
  crops: {
    cocoa: "cocoa, cacao",
    coffee: "coffee, arabica, robusta",
    mango: "mango, mangoes, mangos",
    rubber: "rubber, hevea",
    cashew: "cashew, cashews, cashew nut",
    avocado: "avocado, avocados, avo",
    citrus: "citrus, orange, oranges, lemon, lemons, lime, limes, mandarin, mandarins",
  },
  cropKinds: "arabica, robusta, orange, oranges, lemon, lemons, lime, limes, mandarin, mandarins",

  // Units
  units: {
    centimetre: "centimetre, centimetres, centimeter, centimeters",
    metre: "metre, metres, meter, meters",
    inch: "inch, inches",
    foot: "foot, feet",
    litre: "litre, litres, liter, liters",
    gallon: "gallon, gallons",
    gram: "gram, grams",
    kilogram: "kilo, kilos, kilogram, kilograms",
    pound: "pound, pounds",
    tonne: "tonne, tonnes",
    minute: "minute, minutes",
    hour: "hr, hrs, hour, hours",
    piece: "piece, pieces, pc, pcs, each, unit, units",
    hundred: "hundred",
    thousand: "thousand",
  },
};
