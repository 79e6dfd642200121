import type { LanguageWords } from "./language-words";

export const french: LanguageWords = {
  language: "French",
  months: [
    ["janvier", "janv", "jan"],
    ["fevrier", "fevr", "fev"],
    ["mars"],
    ["avril", "avr"],
    ["mai"],
    ["juin"],
    ["juillet", "juil", "juill"],
    ["aout", "aou"],
    ["septembre", "sept", "sep"],
    ["octobre", "oct"],
    ["novembre", "nov"],
    ["decembre", "dec"],
  ],
  // "mar" is left to the month, which other languages shorten so.
  weekdays: [
    ...["lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche", "lun", "mer"],
    ...["jeu", "ven", "sam", "dim"],
  ],
  early: ["debut", "commencement"],
  middle: ["mi", "milieu"],
  late: ["fin"],
  week: ["semaine", "sem", "s"],
  dateFillers: ["le", "de", "du", "d", "er", "courant"],
  dayWords: ["date", "dates", "jour", "dt", "le", "quand"],
  countWords: [
    ...["nombre", "nb", "nbr", "nbre", "quantite", "qte", "effectif", "eff", "total", "plants"],
    ...["combien", "pieces", "no", "unites", "comptes"],
  ],
  headerFillers: ["de", "du", "des", "d", "la", "les", "l", "en", "a", "au", "aux", "par"],
  facts: {
    batch: [
      ...["lot", "lot no", "no lot", "no de lot", "no du lot", "numero de lot", "numero lot"],
      ...["code lot", "code du lot", "nom du lot", "ref lot", "reference lot", "lot greffe"],
    ],
    fromLot: [
      ...["lot d origine", "lot origine", "lot mere", "lot parent", "lot de semis", "issu du lot"],
      ...["lot porte greffe", "lot de porte greffe", "lot de porte greffes", "lot pg"],
      ...["pris du lot", "provenance lot", "du lot"],
    ],
    variety: [
      ...["variete", "varietes", "cultivar", "clone", "greffon", "variete greffee", "clone greffe"],
      ...["variete du greffon", "variete greffon", "clone du greffon"],
    ],
    rootstock: [
      ...["porte greffe", "porte greffes", "portegreffe", "pg", "sujet", "sujet porte greffe"],
      ...["variete porte greffe", "type de porte greffe", "franc"],
    ],
    method: [
      ...["methode", "methode de greffage", "mode de greffage", "type de greffe", "technique"],
      ...["technique de greffage", "type de greffage", "mode de greffe"],
    ],
    place: [
      ...["emplacement", "planche", "serre", "tablette", "ombriere", "lieu", "parcelle", "chassis"],
      ...["localisation", "carre", "bloc", "tunnel", "banquette", "site"],
    ],
    grafter: [
      ...["greffeur", "greffeuse", "greffe par", "greffes par", "nom du greffeur"],
      "ouvrier greffeur",
    ],
    scionSource: [
      ...["origine greffon", "origine du greffon", "origine des greffons", "origine greffons"],
      ...["provenance greffon", "provenance du greffon", "provenance des greffons"],
      ...["provenance greffons", "source des greffons", "parc a bois", "jardin a bois"],
      ...["arbre mere", "pied mere", "pieds meres", "bois de greffe", "origine bois"],
    ],
    culled: [
      ...["pertes", "perte", "morts", "mortalite", "rebut", "rebuts", "elimines", "ecartes"],
      ...["jetes", "plants morts", "plants elimines", "tries"],
    ],
    dispatched: [
      ...["expedies", "expedition", "livres", "livraison", "vendus", "ventes", "sorties"],
      ...["enleves", "plants livres", "plants vendus", "sortis", "distribues"],
    ],
    closed: ["clos", "cloture", "lot clos", "cloture le", "termine", "ferme"],
    note: [
      ...["note", "notes", "remarque", "remarques", "observation", "observations", "obs"],
      "commentaire",
    ],
    eventDay: ["date", "jour", "date de l operation", "date operation"],
    eventStep: ["etape", "operation", "travail", "tache", "stade", "activite", "intervention"],
    eventCount: ["nombre", "nb", "quantite", "qte", "effectif", "nb plants", "nombre de plants"],
    eventPerson: [
      ...["personne", "qui", "ouvrier", "par", "fait par", "operateur", "agent", "responsable"],
    ],
  },
  steps: {
    sowing: {
      name: ["semis", "semer", "semees"],
      day: ["seme le", "semis le", "date semis", "date de semis", "dt semis", "date du semis"],
      count: [
        ...["graines", "graines semees", "nb graines", "nb semees", "semences", "qte semee"],
        ...["nombre de graines", "nb semis", "feves semees", "graines mises"],
      ],
    },
    germination: {
      name: ["germination", "levee", "germ", "emergence"],
      day: [
        ...["date levee", "date de levee", "date germination", "date de germination", "leve le"],
        "dt levee",
      ],
      count: [
        ...["levees", "germees", "graines germees", "graines levees", "nb levees", "nb germees"],
        ...["plantules", "nb plantules", "plants leves", "nb leves", "leves"],
      ],
    },
    grafting: {
      name: ["greffage", "greffe", "greffee", "greffer", "ecussonnage"],
      day: [
        ...["greffe le", "date greffe", "date greffage", "date de greffe", "date de greffage"],
        ...["dt greffe", "dt greffage", "date du greffage", "greffage le"],
      ],
      count: [
        ...["greffes", "greffees", "greffes faites", "nb greffes", "nb greffees", "qte greffee"],
        ...["qte greffe", "plants greffes", "nombre de greffes", "greffes realisees", "nb greffe"],
      ],
    },
    "first release": {
      name: [
        ...["deligature", "deligaturage", "desserrage", "ouverture ligature", "premiere ouverture"],
        ...["1re ouverture", "ligature ouverte", "degagement", "retrait ligature"],
      ],
      day: ["date deligature", "date ouverture", "deligature le", "date desserrage"],
      count: [],
    },
    "bud break": {
      name: ["debourrement", "depart bourgeon", "depart des bourgeons", "bourgeon parti"],
      day: ["date debourrement", "date de debourrement", "debourre le"],
      count: ["debourres", "bourgeons partis"],
    },
    "take count": {
      name: ["reprise", "prise", "comptage reprise", "controle reprise", "comptage des reprises"],
      day: [
        ...["date reprise", "date de reprise", "date comptage", "date de comptage", "compte le"],
        ...["date prise", "dt reprise", "date controle reprise"],
      ],
      count: [
        ...["reprises", "prises", "pris", "greffes reprises", "greffes prises", "nb reprises"],
        ...["nb reprise", "nb pris", "greffes reussies", "greffes vivantes", "vivants", "reussis"],
        ...["greffons pris", "repris", "nb repris", "reussite"],
      ],
    },
    "first flush": {
      name: ["premiere poussee", "1re poussee", "premier flush", "premiere pousse", "poussee"],
      day: ["date poussee", "date premiere poussee", "date 1re poussee"],
      count: [],
    },
    "flush hardening": {
      name: ["aoutement", "durcissement", "endurcissement", "poussee aoutee", "lignification"],
      day: ["date aoutement", "aoute le", "date durcissement"],
      count: [],
    },
    branching: {
      name: ["ramification", "branchaison", "ramifie"],
      day: ["date ramification", "ramifie le"],
      count: [],
    },
    "union closed": {
      name: [
        ...["soudure", "soudure complete", "soudure fermee", "point de greffe soude"],
        "cicatrisation",
      ],
      day: ["date soudure", "soude le", "date de soudure"],
      count: [],
    },
    ready: {
      name: [
        ...["pret", "prets", "pret a la vente", "pret vente", "fin d elevage", "vendable"],
        "bon a vendre",
      ],
      day: ["pret le", "date pret", "date vente possible", "prets le", "date sortie possible"],
      count: [
        ...["plants prets", "nb prets", "plants vendables", "vendables", "plants finis"],
        ...["plants bons a vendre", "nb pret", "nb vendables"],
      ],
    },
  },
  yes: ["oui", "o", "vrai", "x", "clos", "fait", "termine"],
  no: ["non", "n", "faux", "en cours", "pas encore", "ouvert"],
  totals: ["total", "totaux", "sous total", "s total", "total general", "somme", "ensemble"],
  about: ["environ", "env", "approx", "a peu pres", "vers", "quelque", "pres de", "ca"],
  dozen: ["douzaine", "douzaines", "dz", "dzn", "douz"],
  trays: [
    ...["plaque", "plaques", "caissette", "caissettes", "caisse", "caisses", "rang", "rangs"],
    ...["terrine", "terrines", "planche", "planches", "botte", "bottes"],
  ],
  moved: ["deplace", "deplaces", "deplacement", "transfere", "transfert"],
  splitOff: ["separe", "separation", "divise", "partage", "dedouble", "cede"],
  nothing: [
    ...["neant", "rien", "nd", "pas compte", "non compte", "a compter", "en attente", "aucun"],
    "nc",
  ],
};
