import type { LanguageText } from "./language-text";

/** How to change or add words: language-text.ts. */
export const french: LanguageText = {
  language: "French",
  locales: "fr, fr-CA",

  // Days: spellings beside those of the locales, then small words in a day
  months: {
    january: "jan",
    february: "fev",
    july: "juill",
    august: "aou",
    september: "sep",
  },
  weekdays: {},
  early: "debut, commencement",
  middle: "mi, milieu",
  late: "fin",
  week: "semaine, sem, s",
  dateFillers: "le, de, du, d, er, courant",
  dayLetters: "j, m, a",
  upTo: "au, a",

  // Headers of the records
  dayWords: "date, dates, jour, dt, le, quand",
  countWords: `
    nombre, nb, nbr, nbre, quantite, qte, effectif, eff, total, plants, combien, pieces, no, unites,
    comptes`,
  headerFillers: "de, du, des, d, la, les, l, en, a, au, aux, par",
  facts: {
    batch: `
      lot, lot no, no lot, no de lot, no du lot, numero de lot, numero lot, code lot, code du lot,
      nom du lot, ref lot, reference lot, lot greffe`,
    fromLot: `
      lot d origine, lot origine, lot mere, lot parent, lot de semis, issu du lot, lot porte greffe,
      lot de porte greffe, lot de porte greffes, lot pg, pris du lot, provenance lot, du lot`,
    variety: `
      variete, varietes, cultivar, clone, greffon, variete greffee, clone greffe,
      variete du greffon, variete greffon, clone du greffon`,
    rootstock: `
      porte greffe, porte greffes, portegreffe, pg, sujet, sujet porte greffe, variete porte greffe,
      type de porte greffe, franc`,
    crop: "culture, espece, essence, especes",
    method: `
      methode, methode de greffage, mode de greffage, type de greffe, technique,
      technique de greffage, type de greffage, mode de greffe, mode de multiplication`,
    place: `
      emplacement, planche, serre, tablette, ombriere, lieu, parcelle, chassis, localisation, carre,
      bloc, tunnel, banquette, site`,
    grafter: "greffeur, greffeuse, greffe par, greffes par, nom du greffeur, ouvrier greffeur",
    scionSource: `
      origine greffon, origine du greffon, origine des greffons, origine greffons,
      provenance greffon, provenance du greffon, provenance des greffons, provenance greffons,
      source des greffons, parc a bois, jardin a bois, arbre mere, pied mere, pieds meres,
      bois de greffe, origine bois`,
    culled: `
      pertes, perte, morts, mortalite, rebut, rebuts, elimines, ecartes, jetes, plants morts,
      plants elimines, tries`,
    dispatched: `
      expedies, expedition, livres, livraison, vendus, ventes, sorties, enleves, plants livres,
      plants vendus, sortis, distribues`,
    closed: "clos, cloture, lot clos, cloture le, termine, ferme",
    note: "note, notes, remarque, remarques, observation, observations, obs, commentaire",
    eventDay: "date, jour, date de l operation, date operation",
    eventStep: "etape, operation, travail, tache, stade, activite, intervention",
    eventCount: "nombre, nb, quantite, qte, effectif, nb plants, nombre de plants",
    eventPerson: "personne, qui, ouvrier, par, fait par, operateur, agent, responsable",
  },
  steps: {
    sowing: {
      name: "semis, semer, semees",
      day: "seme le, semis le, date semis, date de semis, dt semis, date du semis",
      count: `
        graines, graines semees, nb graines, nb semees, semences, qte semee, nombre de graines,
        nb semis, feves semees, graines mises`,
    },
    germination: {
      name: "germination, levee, germ, emergence",
      day: "date levee, date de levee, date germination, date de germination, leve le, dt levee",
      count: `
        levees, germees, graines germees, graines levees, nb levees, nb germees, plantules,
        nb plantules, plants leves, nb leves, leves`,
    },
    grafting: {
      name: "greffage, greffe, greffee, greffer, ecussonnage",
      day: `
        greffe le, date greffe, date greffage, date de greffe, date de greffage, dt greffe,
        dt greffage, date du greffage, greffage le`,
      count: `
        greffes, greffees, greffes faites, nb greffes, nb greffees, qte greffee, qte greffe,
        plants greffes, nombre de greffes, greffes realisees, nb greffe`,
    },
    "first release": {
      name: `
        deligature, deligaturage, desserrage, ouverture ligature, premiere ouverture, 1re ouverture,
        ligature ouverte, degagement, retrait ligature`,
      day: "date deligature, date ouverture, deligature le, date desserrage",
    },
    "bud break": {
      name: "debourrement, depart bourgeon, depart des bourgeons, bourgeon parti",
      day: "date debourrement, date de debourrement, debourre le",
      count: "debourres, bourgeons partis",
    },
    "take count": {
      name: "reprise, prise, comptage reprise, controle reprise, comptage des reprises",
      day: `
        date reprise, date de reprise, date comptage, date de comptage, compte le, date prise,
        dt reprise, date controle reprise`,
      count: `
        reprises, prises, pris, greffes reprises, greffes prises, nb reprises, nb reprise, nb pris,
        greffes reussies, greffes vivantes, vivants, reussis, greffons pris, repris, nb repris,
        reussite`,
    },
    "first flush": {
      name: "premiere poussee, 1re poussee, premier flush, premiere pousse, poussee",
      day: "date poussee, date premiere poussee, date 1re poussee",
    },
    "flush hardening": {
      name: "aoutement, durcissement, endurcissement, poussee aoutee, lignification",
      day: "date aoutement, aoute le, date durcissement",
    },
    branching: {
      name: "ramification, branchaison, ramifie",
      day: "date ramification, ramifie le",
    },
    "union closed": {
      name: "soudure, soudure complete, soudure fermee, point de greffe soude, cicatrisation",
      day: "date soudure, soude le, date de soudure",
    },
    ready: {
      name: "pret, prets, pret a la vente, pret vente, fin d elevage, vendable, bon a vendre",
      day: "pret le, date pret, date vente possible, prets le, date sortie possible",
      count: `
        plants prets, nb prets, plants vendables, vendables, plants finis, plants bons a vendre,
        nb pret, nb vendables`,
    },
  },

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "semi, seme, ensemenc",
    seed: "grain, feve, noix, semence, noyau",
    begin: "mise, mis, debut",
    germinate: "lev, leve, germ, emergence, plantule, soldat",
    container: "sachet, pot, pots, conteneur, godet",
    pot: "empot, repiq, rempot, ensach",
    graft: "gref, ecussonn",
    bud: "ecusson, yeux, oeil, bourgeon",
    loosen: "desserr, ouver, ouvr, degag",
    takeOff: "deligat, retrait, oter",
    wrap: "ligat, ruban, film, bande",
    burst: "debourr, demarr, depart, brout",
    shoot: "rejet",
    flush: "flush, pouss",
    union: "soudur, soude, cicatris",
    cutBack: "etet, rabat, recep, arcur, cassage",
    harden: "acclimat, durciss, endurciss, soleil, aout",
    alive: "vivant, vif, vifs, survi",
    take: "repr, pris, reuss",
    check: "compta, control, decompt, constat, verif",
    ready: "pret, bon, bons, vendab, livrab, commercialisab",
    gone: "vendu, vente, livr, expedi, sorti, enlev, distrib",
    dead: "mort, perte, rebut, elimin, manqu, echec, jete",
    rest: "reste, dispo, reserv, solde",
    cutting: "boutur",
    root: "enracin",
    cut: "coup, recolt, prelev",
    scion: "greffon, bois, baguette",
    garden: "parc, mere",
    source: "origin, proven, issu, source",
    batch: "lot, lots",
    code: "code, ref, matricul, serie, ident",
    variety: "variet, var, clone, cultivar, genotyp",
    stock: "porte, pg, sujet",
    place: "planch, serre, ombrier, emplac, germoir, tablett, parcell, carre, lieu, bloc, chassis",
    by: "par",
    grafter: "greffeur, greffeus",
    person: "ouvrier, pepinierist, equipe, agent, qui, operateur",
    kind: "type, mode, methode, technique",
    crop: "espece, culture, essence",
    customer: "client, acheteu, benefic, destinat",
    closed: "clos, clotur",
    note: "obs, observ, remarq, note",
    measure: `
      pourcent, taux, hauteur, diametr, prix, cout, heure, signatur, telephone, unite, meteo,
      age`,
    aside: "planter, champ, terre, pose, concern, fait, total, nom",
    meantFor: "pour, p",
    dayUnit: "j, jour",
    weekUnit: "sem, semaine",
    monthUnit: "mois",
    first: "premier",
    later: "deuxi, second, troisi, dernier",
  },

  // Headers and names of the other tables
  name: "nom",
  from: "du",
  tables: {
    orders: {
      order: "bon de commande, no de commande, commande, no commande",
      customer: "client, acheteur",
      variety: "variete, clone, cultivar",
      wanted: "quantite, voulu, qte, qte commandee, nb plants, nombre de plants",
      by: "pour le, avant le, echeance, livraison, date de livraison",
      delivered: "livre, livres",
      closed: "clos, cloture, cloturee, terminee",
    },
    crew: {
      person: "greffeur, employe",
      tasks: "taches, tache, etapes, travaux",
      hours: "heures par jour, heures jour, heures, h jour",
      offFrom: "absent du, absente du, conge du",
      offTo: "absent au, absente au, conge au",
    },
    closedDays: {
      day: "jour, jours, ferme du",
      to: "au, ferme au, jusqu au",
    },
    prices: {
      item: "article, materiel, produit, fourniture",
      price: "prix, prix unitaire, cout",
      per: "par, pour, unite",
    },
    places: {
      holds: "capacite, contient",
    },
    timetable: {
      method: "methode, culture",
      step: "etape, stade, tache",
      after: "apres, apres l etape, compte depuis",
      from: "jour au plus tot, au plus tot",
      usual: "jour habituel, habituel, jours, jour",
      by: "jour au plus tard, au plus tard",
      counted: "compte, comptes",
      kept: "restent sur 100, gardes sur 100",
      perPersonHour: "par personne heure, par heure, plants par heure",
      needs: "besoins, materiel",
      caution: "precaution, precautions, securite",
      source: "source, sources",
    },
  },
  tabs: {
    orders: "commandes, commande",
    crew: "equipe, personnel",
    closedDays: "jours fermes, jours de fermeture",
    perhapsClosedDays: "jours feries",
    places: "emplacements",
    prices: "prix",
  },

  // Words in cells
  yes: "oui, o, vrai, x, clos, fait, termine",
  no: "non, n, faux, en cours, pas encore, ouvert",
  nothing: "neant, rien, nd, pas compte, non compte, a compter, en attente, aucun, nc",
  ditto: "idem, id, meme, ditto",
  totals: "total, totaux, sous total, s total, total general, somme, ensemble",
  about: "environ, env, approx, a peu pres, vers, quelque, pres de, ca",
  dozen: "douzaine, douzaines, dz, dzn, douz",
  trays: `
    plaque, plaques, caissette, caissettes, caisse, caisses, rang, rangs, terrine, terrines,
    planche, planches, botte, bottes`,
  of: "de, a",
  percent: "pour cent",
  moved: "deplace, deplaces, deplacement, transfere, transfert",
  splitOff: "separe, separation, divise, partage, dedouble, cede",
  and: "et",
  either: "ou",
  anyVariety: `
    n importe laquelle, n importe lequel, peu importe, toute variete, quelconque, variete`,
  everything: "tous, toutes, tout",
  work: "heure, heures, heure de travail, main d oeuvre, main d œuvre",
  per: "par",
  seedItems: `
    graine, graines, semence, semences, cabosse, cabosses, noyau, noyaux, noix, fruit, fruits`,

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "fente, fante, fente pleine, fente simple",
    wedge: "fente terminale, terminale, apicale, en tete, tete",
    side: "lateral, laterale, lat, cote, fente laterale, fente de cote",
    veneer: "placage, plaquage, placage cote, placage de cote, placage lateral, plaquage lateral",
    approach: "approche",
    patch: "plaque, brun, brune",
    green: "vert, verte",
    shield: "t, ecusson, ecussonnage, t renverse, œil en t, oeil en t",
    chip: "chip, eclat",
    softwood: "bois tendre, herbacee",
    stone: "noyau, epicotyle, epicotylee",
    hypocotyl: "hypocotyle, hypocotyledonaire, allumette, stade allumette",
    cutting: "bouture, boutures, bouturage, bouture racinee, boutures racinees",
    seedling: `
      semis, franc, francs, franc de pied, issu de semis, graine, graines, plants de graine,
      non greffe, tout venant`,
  },
  budding: "œil, oeil, bourgeon",
  graftFillers: `
    greffe, greffes, greffee, greffage, gref, en, de, du, des, sur, par, a, au, la, le, l, d`,
  crops: {
    cocoa: "cacao, cacaoyer, cacaoyers",
    coffee: "cafe, cafeier, cafeiers",
    mango: "mangue, mangues, manguier, manguiers",
    rubber: "hevea, heveas, caoutchouc",
    cashew: "anacarde, anacardier, anacardiers, cajou",
    avocado: "avocat, avocats, avocatier, avocatiers",
    citrus: "agrume, agrumes, oranger, orangers, citronnier, citronniers, mandarinier",
  },
  cropKinds: "oranger, orangers, citronnier, citronniers, mandarinier",

  // Units
  units: {
    centimetre: "centimetre, centimetres",
    metre: "metre, metres",
    inch: "pouce, pouces",
    foot: "pied, pieds",
    litre: "litre, litres",
    gallon: "gallon, gallons",
    gram: "gramme, grammes",
    kilogram: "kilo, kilos, kilogramme, kilogrammes",
    pound: "livre, livres",
    tonne: "tonne, tonnes",
    minute: "minute, minutes",
    hour: "heure, heures",
    piece: "piece, pieces, unite, unites",
    hundred: "cent, centaine",
    thousand: "mille",
  },
};
