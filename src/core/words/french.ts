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
      nombre, nb, nbr, nbre, quantite, qte, effectif, eff, total, plants, combien,
      pieces, no, comptes, unites, qtes, nbe`,
  headerFillers: "de, du, des, d, la, les, l, en, a, au, aux, par",
  headerVerbs: "que, ont, sont, ete, apres",
  facts: {
    batch: "lot, bande",
    fromLot: "lot parent, pris du lot, issu de, provient de, vient de",
    variety: `clone, greffon`,
    rootstock: `pg, sujet, franc`,
    crop: "espece",
    method: `methode`,
    place: `emplacement, planche, serre, tablette, ombriere, lieu, parcelle, chassis, localisation, carre, bloc, tunnel, banquette, site`,
    grafter: "greffeur",
    scionSource: `arbre mere, pied mere, pieds meres, bois de greffe`,
    culled: `perte, morts, rebut, ecartes, jetes, tries`,
    dispatched: `livres`,
    closed: "clos, termine, fermeie",
    note: "note, notes, obs",
    eventDay: "date, jour, date de l operation, date operation",
    eventStep:
      "etape, operation, travail, travaux, tache, taches, stade, activite, intervention, travail fait, travaux faits",
    eventCount: "nombre, nb, quantite, qte, effectif, nb plants, nombre de plants",
    eventPerson:
      "personne, qui, ouvrier, ouvriers, par, fait par, operateur, agent, responsable, equipe",
    eventReason: "raison, motif, cause de perte, pourquoi",
  },
  steps: {
    sowing: {
      name: "semis, semer, semees",
      day: "seme le",
      count: `graines semees, feves semees, graines mises`,
    },
    germination: {
      name: "germination, levee, germ, emergence",
      day: "leve le",
      count: `leves`,
    },
    grafting: {
      name: "greffage, greffe, greffee, greffer, ecussonnage",
      day: "greffe le",
      count: `greffes, greffees, greffes faites, greffes realisees`,
    },
    "first release": {
      name: `
        desserrage, ouverture ligature, premiere ouverture, 1re ouverture, ligature ouverte,
        degagement`,
      day: "date ouverture",
    },
    "bud break": {
      name: "debourrement, depart bourgeon, depart des bourgeons, bourgeon parti",
      day: "debourre le",
      count: "debourres, bourgeons partis",
    },
    "take count": {
      name: "reprise, prise, comptage reprise, controle reprise, comptage des reprises",
      day: `date comptage, date de comptage, compte le`,
      count: `pris`,
    },
    "first flush": {
      name: "premiere poussee, 1re poussee, premier flush, premiere pousse, poussee",
      day: "date poussee",
    },
    "flush hardening": {
      name: "aoutement, durcissement, endurcissement, poussee aoutee, lignification",
      day: "aoute le",
    },
    branching: {
      name: "ramification, branchaison, ramifie",
      day: "ramifie le",
    },
    "union closed": {
      name: "soudure, soudure complete, soudure fermee, point de greffe soude, cicatrisation",
      day: "soude le",
    },
    ready: {
      name: "pret, prets, pret a la vente, pret vente, fin d elevage, vendable, bon a vendre",
      day: "date vente possible, date sortie possible",
      count: `plants finis`,
    },
  },

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "semi, seme, ensemenc",
    planted: "plante",
    seed: "grain, feve, noix, semence, noyau, amande, pepin, cabosse",
    begin: "mise, mis, debut, depart",
    germinate: "lev, leve, soldat, papillon, naiss, nes",
    container: "sachet, conteneur, godet, gaine, sac, sacs, poche",
    pot: "empot, repiq, rempot",
    graft: "gref, ecussonn, ecuss, surgref",
    bud: "ecusson, yeux, oeil, bourgeon",
    loosen: "desserr, ouver, ouvr, degag, incis, fendu, relach, liber",
    takeOff: "deligat, retrait, oter, enlev, delia, deband, retir, ote, decapuch, deball",
    wrap: "ligat, ruban, lien, manchon, coiffe, attache, bande, capuchon",
    film: "plastiq",
    burst: "debourr, demarr, brout, gonfl, eclos",
    shoot: "rejet",
    flush: "pouss, feuil",
    union: "cicatris, soud",
    cutBack: "etet, rabat, recep, arcur, cassage, ecim, courbure",
    harden: "durciss, endurci, soleil, aout, desombr, ombrage, durci",
    alive: "vif, vifs, survi, viv, vive",
    take: "repr, pris, reuss, rep",
    check: `
      control, decompt, constat, verif, visite, notation, releve, cpt, cptage,
      suivi, compt, passage`,
    ready: "pret, bon, bons, vendab, livrab, march, commerc",
    gone: `
      vente, livr, expedi, distrib, exp, vdu, vdus, vte, cess, ecoul, enleves, enlevees, emport, partis, remis`,
    out: "sorti",
    dead: `
      perte, rebut, elimin, manqu, echec, jete, crev, sech, dessech, ecart, dechet, rate, rates, deced`,
    rest: "reste, dispo, solde, invendu, existant",
    cutting: "boutur",
    root: "enracin, racin",
    cut: "coup, prelev, cueil",
    scion: "greffon, bois, baguette, rameau",
    garden: "parc, mere, jardin, semencier",
    source: "proven, issu, provient, venant, vient",
    batch: "lot, lots, fiche",
    code: "matricul, serie",
    variety: "hybrid, materiel, mat",
    stock: "porte, pg, sujet, pge",
    place: `
      planch, serre, ombrier, germoir, parcell, carre, lieu, bloc, chassis, abri,
      allee, ligne, secteur, quartier, compart, empl, pepiniere, rang, travee,
      chambre, casier, ilot, caisse, bac, bacs`,
    by: "par",
    grafter: "greffeur, greffeus, ecussonneur",
    person: `
      ouvrier, pepinierist, equipe, agent, qui, resp, tacheron, operat, chef,
      employe, manoeuvre, technicien, initial, salarie`,
    kind: "mod, tech, genre, procede",
    crop: "espece, essence, speculation",
    customer: "acheteu, benefic, destinat",
    closed: "clos, clotur, archiv, termine",
    note: "remarq, rmq, divers, problem, sante, rq, etat",
    measure: `
      pourcent, taux, prix, cout, heure, telephone, meteo, haut, diam, poids,
      calibre, montant, visa, paraf, salaire`,
    aside: `
      planter, champ, terre, pose, concern, fait, total, nom, effectu, realis,
      reel, suite, place, net, nouvel, nouveau, en, plantes, humid, neuf`,
    meantFor: "pour, p",
    dayUnit: "j, jour",
    weekUnit: "sem, semaine",
    monthUnit: "mois",
    first: "premier, 1ere",
    later: "deuxi, troisi, dernier, encore",
  },

  // Headers and names of the other tables
  name: "nom",
  from: "du",
  tables: {
    orders: {
      order: "bon de commande, commande",
      customer: "client, acheteur, beneficiaire, destinataire, pour qui",
      variety: "variete, clone, cultivar, variete demandee, variete voulue, espece",
      wanted: "quantite, voulu, qte, qte commandee, commandes, demandes, combien",
      by: `
        pour le, avant le, echeance, livraison, date voulue, date souhaitee, livrer le,
        pour quand, date limite, delai`,
      delivered: "livre, livres, livree, remis, enleve",
      closed: "clos, cloture, cloturee, terminee",
    },
    crew: {
      person: "greffeur, employe",
      tasks: "taches, tache, etapes, travaux",
      methods: "methodes, especes, cultures, greffe",
      hours: "heures par jour, heures, h par jour",
      offFrom: "absent du, absente du, conge du",
      offTo: "absent au, absente au, conge au",
      days: "jours",
      off: "absent, absences, conge, conges, repos, jours de repos",
    },
    closedDays: {
      day: "jour, jours, ferie, feries, fermeture, ferme, conge",
      to: "au, ferme au, fin",
    },
    prices: {
      item: "article, materiel, produit, fourniture, designation",
      price: "prix, cout",
      per: "par, pour, unite",
    },
    places: {
      holds: "capacite, contient",
    },
    germination: {
      batch: "lot de graines, lot de semences",
      sample: "echantillon, plateau, repetition, boite",
      sownOn: "seme le, date de semis, semis, semee le",
      sown: "graines semees, graines, nombre de graines, nb graines, semences",
      day: "jour, date, compte le, releve le, jours, jours apres semis, jas",
      up: "levees, leves, germees, germes, nouvelles levees, germinations",
      soFar: "levees au total, total leve, cumul, levees cumulees, total germe, germees au total",
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
      kind: "genre, genre d etape",
      every: "tous les jours n, tous les x jours, intervalle jours",
      until: "jusqu a, jusqu a l etape",
    },
  },
  tableParts: {
    order: "cde, cmde, comm, command, bon, bc, numero",
    buyer: "planteur, producteur",
    want: "demand, souhait, command, commande, cde, besoin, reserv",
    hand: "retir, donne, servi, parti",
    due: "limite, pour",
    ended: "soldee, termin, etat, statut, annul, fini",
    owed: "manqu",
    aside:
      "acompte, avance, paye, regl, vendeur, fournisseur, salaire, longueur, largeur, surface, achat",
    sort: "clone, espece",
    plants: "qte, quantite, nbre, nb, nombre, pieds, arbre",
    person: "prenom",
    task: "travau, travail, sait, activite, peut, capable",
    hour: "heure",
    worked: "travaille, presence, ouvre, ouvrable, semaine",
    away: "ferme, ferie, vacances",
    first: "debut, des, depuis, premier",
    last: "jusqu, dernier, retour",
    item: "fournit, designat",
    price: "pu, tarif",
    unit: "mesure",
    hold: "capacit, contien, maxi, contenance, place, tient",
    place: "carre",
  },
  tabs: {
    orders: "commandes, commande",
    crew: "equipe, personnel",
    closedDays: "jours fermes, jours de fermeture",
    perhapsClosedDays: "jours feries",
    places: "emplacements",
    prices: "prix",
    germination: "germination, germinations, tests de germination, essais de germination",
  },

  // Words in cells
  yes: "oui, o, vrai, x, clos, fait, termine",
  no: "non, n, faux, en cours, pas encore, ouvert",
  nothing:
    "neant, rien, nd, pas compte, pas encore compte, non compte, a compter, en attente, aucun, nc",
  notDone:
    "sans objet, s o, pas necessaire, non necessaire, non requis, pas besoin, inutile, a sauter, saute",
  noName: `
      inconnu, inconnue, sans nom, melange, melanges, divers, diverses, plusieurs,
      sans etiquette, pas connu, ne sait pas, non identifie, indetermine, non precise, tout venant,
      journaliers, temporaires, saisonniers, stagiaire, stagiaires, eleves, benevoles,
      client de passage, comptant, particulier, particuliers`,
  ditto:
    "idem, id, meme, ditto, dito, le meme, la meme, les memes, pareil, comme dessus, comme ci dessus, ci dessus, idem ci dessus",
  totals: "total, totaux, sous total, s total, total general, somme, ensemble",
  about: "environ, env, approx, a peu pres, vers, quelque, pres de, ca",
  dozen: "douzaine, douzaines, dz, dzn, douz",
  trays: `
    plaque, plaques, caissette, caissettes, caisse, caisses, rang, rangs, terrine, terrines,
    planche, planches, botte, bottes`,
  of: "de, a",
  percent: "pour cent",
  notPlain: "tri, triage, sevrage, eclaircissage",
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
  scionItems:
    "greffon, greffons, baguette, baguettes, oeil, yeux, ecusson, ecussons, bourgeon, bourgeons",

  // On which days somebody works, as a cell of the crew says it
  workDays: {
    everyDay: "tous les jours, chaque jour",
    workingWeek: "en semaine, jours ouvrables, jours ouvres, tous les jours ouvres",
    weekend: "week end, week ends",
    upTo: "jusqu au",
    except: "sauf, pas, excepte, sans, jamais, ne travaille pas",
    off: "libre, repos, absent, absente",
    half: "demi, demi journee",
    morning: "matin, matins",
    afternoon: "apres midi",
    filler: "le, les, du, des, de, seulement",
  },

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "fente, fante, fente pleine, fente simple, fente double, double fente",
    wedge: "fente terminale, terminale, apicale, en tete, tete",
    side: "lateral, laterale, lat, cote, fente laterale, fente de cote",
    veneer: "placage, plaquage, placage cote, placage de cote, placage lateral, plaquage lateral",
    approach: "approche",
    patch: "plaque, brun, brune",
    green: "vert, verte",
    shield: "t, ecusson, ecussonnage, t renverse, t inverse, œil en t, oeil en t",
    chip: "chip, eclat, copeau, ecusson a copeau, ecussonnage a copeau",
    softwood: "bois tendre, herbacee",
    stone: "noyau, epicotyle, epicotylee",
    hypocotyl:
      "hypocotyle, hypocotyledonaire, allumette, stade allumette, soldat, petit soldat, stade soldat, stade petit soldat",
    cutting:
      "bouture, boutures, bouturage, bouture herbacee, boutures herbacees, bouture ligneuse, boutures ligneuses, bouture racinee, boutures racinees",
    seedling: `
      semis, semis direct, franc, francs, franc de pied, plant franc, plants francs, issu de semis, graine, graines, semence, semences, plants de graine,
      non greffe, non greffes, pas greffe, sans greffe, tout venant`,
  },
  atTop: "sommet, en bout",
  budding: "œil, oeil, bourgeon",
  graftFillers: `
    greffe, greffes, greffee, greffage, gref, g, dormant, plant, plants, feuille, feuilles, noeud, noeuds, orthotrope, orthotropes, plagiotrope, plagiotropes, en, de, du, des, sur, par, a, au, la, le, l, d`,
  crops: {
    cocoa: "cacao, cacaoyer, cacaoyers",
    coffee: "cafe, cafeier, cafeiers",
    mango: "mangue, mangues, manguier, manguiers",
    rubber: "hevea, heveas, caoutchouc, caoutchoutier",
    cashew: "anacarde, anacardier, anacardiers, cajou",
    avocado: "avocat, avocats, avocatier, avocatiers",
    citrus:
      "agrume, agrumes, oranger, orangers, orange, oranges, citron, citrons, mandarine, mandarines, pomelo, citronnier, citronniers, mandarinier",
  },
  cropKinds:
    "oranger, orangers, orange, oranges, citron, citrons, mandarine, mandarines, pomelo, citronnier, citronniers, mandarinier",

  // Units
  stepKinds: {
    job: "travail, obligatoire",
    count: "comptage",
    look: "coup d oeil, facultatif, observation",
  },
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
