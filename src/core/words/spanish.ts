import type { LanguageText } from "./language-text";

/** How to change or add words: language-text.ts. */
export const spanish: LanguageText = {
  language: "Spanish",
  locales: "es",

  // Days: spellings beside those of the locales, then small words in a day
  months: {
    february: "febr",
    march: "mzo",
    august: "agto",
    september: "setiembre, sept, set",
  },
  weekdays: {},
  early: "principio, principios, inicio, inicios, comienzo, comienzos",
  middle: "mediados, mediado, mitad, medio",
  late: "fin, fines, final, finales",
  week: "semana, sem",
  dateFillers: "de, del, el, a, dia, o, ro, ero",
  dayLetters: "d, m, a",
  upTo: "a, hasta",

  // Headers of the records
  dayWords: "f, fecha, fechas, fec, fch, dia, cuando",
  countWords: `
    numero, num, no, n, nro, n o, cantidad, cant, cdad, conteo, total, plantas, pzas, unidades, uds,
    cuantas, cuantos`,
  headerFillers: "de, del, la, el, los, las, en, a, al, por, para",
  facts: {
    batch: `
      lote, lote no, no lote, no de lote, numero de lote, codigo de lote, tanda, codigo lote,
      nombre del lote, num lote, nro lote, nro de lote, partida`,
    fromLot: `
      lote de origen, lote origen, lote madre, lote padre, lote de patrones, del lote, lote patron,
      lote patrones, lote de patron, lote de siembra, lote de semillero, viene del lote`,
    variety: `
      variedad, variedades, cultivar, clon, variedad injertada, clon injertado,
      variedad de la vareta, variedad del injerto, clon del injerto, copa`,
    rootstock: `
      patron, patrones, portainjerto, portainjertos, porta injerto, porta injertos, pie,
      variedad del patron, tipo de patron, clon patron`,
    crop: "cultivo, especie, especies",
    method: `
      metodo, metodo de injerto, metodo de injertacion, tipo de injerto, tecnica, forma de injerto,
      metodo de propagacion, forma de propagacion`,
    place: `
      lugar, ubicacion, cama, invernadero, vivero, mesa, banco, nave, era, sombreadero, bancal,
      bloque, umbraculo, casa sombra, sitio, cantero`,
    grafter: "injertador, injertadora, injertado por, injerto por, nombre del injertador",
    scionSource: `
      origen de la vareta, origen vareta, origen varetas, origen de varetas, fuente de varetas,
      origen de la yema, origen yema, origen yemas, origen de yemas, fuente de yemas, jardin clonal,
      arbol madre, planta madre, banco de yemas, banco de varetas, procedencia vareta,
      procedencia yema, procedencia de la vareta, varetas de`,
    culled: `
      descarte, descartes, descartadas, descartados, muertas, muertos, bajas, perdidas, mortalidad,
      eliminadas, desechadas, plantas muertas, rechazo`,
    dispatched: `
      despachadas, despacho, despachos, vendidas, vendidos, ventas, entregadas, entregados,
      entregas, salidas, enviadas, plantas vendidas, plantas entregadas`,
    closed: "cerrado, cerrada, lote cerrado, terminado, terminada, fecha de cierre, cierre",
    note: "nota, notas, observacion, observaciones, obs, comentario, comentarios",
    eventDay: "fecha, dia, fecha de la labor, fecha labor",
    eventStep: "etapa, labor, actividad, tarea, evento, operacion, trabajo, fase",
    eventCount: "cantidad, cant, numero, conteo, plantas, no de plantas, cuantas",
    eventPerson: "persona, quien, responsable, trabajador, hecho por, operario, encargado",
  },
  steps: {
    sowing: {
      name: "siembra, sembrado, sembrada, semillado",
      day: "fecha siembra, fecha de siembra, f siembra, sembrado el, fec siembra, dia de siembra",
      count: `
        semillas, semillas sembradas, sembradas, no semillas, cant semillas, cant sembrada,
        cantidad sembrada, numero de semillas, semilla`,
    },
    germination: {
      name: "germinacion, germ, emergencia, nacencia",
      day: "fecha germinacion, fecha de germinacion, f germinacion, germino el, fec germ",
      count: `
        germinadas, germinados, plantulas, nacidas, semillas germinadas, no germinadas,
        cant germinadas, plantulas nacidas, emergidas`,
    },
    grafting: {
      name: "injerto, injertacion, injertado, injertada, injertar, enjertacion",
      day: `
        fecha injerto, fecha de injerto, f injerto, fecha injertacion, injertado el,
        fecha de injertacion, fec injerto, dia de injerto`,
      count: `
        injertos, injertadas, injertados, injertos hechos, injertos realizados, plantas injertadas,
        no injertos, cant injertos, cant injertada, cant injertadas, numero de injertos,
        cantidad injertada`,
    },
    "first release": {
      name: `
        desamarre, destape, desvendado, primer destape, aflojado, retiro de cinta, primera apertura,
        primer desamarre, corte de cinta, desate, retiro de amarre, soltar amarre,
        descubrir injerto`,
      day: "fecha desamarre, fecha destape, fecha de destape, fecha de desamarre",
    },
    "bud break": {
      name: "brotacion, brote de yema, rotura de yema, yema brotada, brotacion de yemas",
      day: "fecha brotacion, fecha de brotacion, broto el",
      count: "brotados, brotadas, yemas brotadas",
    },
    "take count": {
      name: `
        prendimiento, prendida, conteo de prendimiento, pega, evaluacion de prendimiento,
        conteo prendimiento, prendido`,
      day: `
        fecha prendimiento, fecha de prendimiento, fecha conteo, fecha de conteo, f prendimiento,
        contado el, fecha evaluacion`,
      count: `
        prendidos, prendidas, injertos prendidos, plantas prendidas, pegados, pegadas, no prendidos,
        cant prendidos, injertos vivos, injertos exitosos, cant prendidas, logrados, exitosos`,
    },
    "first flush": {
      name: "primer flujo, primer flush, primera brotacion foliar, flujo, primer brote foliar",
      day: "fecha flujo, fecha primer flujo",
    },
    "flush hardening": {
      name: "endurecimiento, maduracion del brote, brote maduro, flujo maduro, lignificacion",
      day: "fecha endurecimiento, endurecido el",
    },
    branching: {
      name: "ramificacion, ramificado, ramificada",
      day: "fecha ramificacion, ramifico el",
    },
    "union closed": {
      name: "soldadura, union soldada, union cerrada, union cicatrizada, cicatrizacion",
      day: "fecha soldadura, fecha de soldadura, soldado el",
    },
    ready: {
      name: "listo, lista, listo para venta, listas para la venta, apto para venta, terminacion",
      day: `
        fecha lista, fecha listo, lista el, listo el, fecha disponible, fecha de entrega posible`,
      count: `
        listas, listos, plantas listas, plantas aptas, plantas terminadas, cant listas, no listas,
        plantas para venta`,
    },
  },

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "siem, sembr, semill",
    seed: "semilla, almendra, hueso, pepa",
    begin: "inicio, inicial, comienzo",
    germinate: "germ, emerg, nacid, nacio",
    container: "bols, maceta, funda, tubete",
    pot: "trasplan, embols, repic, enfund",
    graft: "injert, inj, enjert",
    bud: "yema",
    loosen: "desat, afloj, destap, descap, abert, abrir",
    takeOff: "desvend, quita, retir, desamarr",
    wrap: "cinta, vendaje, plastic, parafilm, amarre",
    burst: "brot",
    shoot: "brote",
    flush: "flush, hoja",
    union: "soldad, cicatriz, union",
    cutBack: "despunt, descop, agobi, decapit, descabez",
    harden: "endurec, sol, aclimat, rustific",
    alive: "viv, viva, vivo, sobreviv",
    take: "prend, peg, pega, pego, lograd, exito",
    check: "revis, conteo, evaluac, lectur, recuento",
    ready: "list, apto, apta, vendib, comercial",
    gone: "vend, venta, entr, salid, despach",
    dead: "muert, perd, baja, desech, descart, falla, fallid, mortalidad",
    rest: "saldo, queda, existenc, resta, reservad, disponib",
    cutting: "estaca, esqueje",
    root: "enraiz",
    cut: "cort, cosech",
    scion: "pua, puas, vareta, copa, varilla",
    garden: "jardin, madre, huerto",
    source: "origen, proced, fuente",
    batch: "lote, tanda",
    code: "codigo, cod, id, identific, ref, clave",
    variety: "varied, var, clon, genotip, cultivar",
    stock: "portainj, patron, pie",
    place: "cama, mesa, bloque, invernad, ubic, lugar, nave, vivero, bancal, parcela",
    by: "por",
    grafter: "injertador, enjertador",
    person: "operari, op, respons, obrero, quien, tecnico",
    kind: "tipo, metodo, tecnica, forma",
    crop: "especie, cultivo",
    customer: "cliente, comprador, destino, beneficiar",
    closed: "cerrad",
    note: "nota, observ, obs, coment",
    measure: `
      altura, diametro, porcent, precio, costo, horas, firma, telefono, unidad, clima, motivo,
      largo, edad`,
    aside: "puest, hech, realizad, total, nombre, entrada",
    meantFor: "para, p",
    dayUnit: "d, dia, dias",
    weekUnit: "sem, semana",
    monthUnit: "mes, meses",
    first: "primer",
    later: "segund, tercer, ultim",
  },

  // Headers and names of the other tables
  name: "nombre",
  from: "desde, de",
  tables: {
    orders: {
      order: "pedido, no pedido",
      customer: "cliente, comprador",
      variety: "variedad, clon",
      wanted: "cantidad, pedidas, cant",
      by: "plazo, entrega, fecha, fecha de entrega",
      delivered: "entregado, entregados",
      closed: "cerrado",
    },
    crew: {
      person: "injertador, empleado",
      tasks: "tareas, tarea, labores, etapas",
      hours: "horas por dia, horas al dia, horas diarias, horas dia, horas",
      offFrom: "ausente desde, libre desde",
      offTo: "ausente hasta, libre hasta",
    },
    closedDays: {
      day: "dia, dias, fecha",
      to: "hasta",
    },
    prices: {
      item: "articulo, producto, insumo",
      price: "precio, precio unitario, costo, coste",
      per: "por, unidad",
    },
    places: {
      holds: "capacidad, caben",
    },
    timetable: {
      method: "metodo, cultivo",
      step: "etapa, paso, labor",
      after: "despues de, tras, contado desde",
      from: "desde el dia, dia mas temprano",
      usual: "dia usual, dia habitual, dias, dia",
      by: "hasta el dia, dia mas tardio",
      counted: "contado, se cuenta",
      kept: "quedan de 100",
      perPersonHour: "por persona hora, por hora, plantas por hora",
      needs: "necesita, materiales, insumos",
      caution: "precaucion, precauciones, seguridad",
      source: "fuente, fuentes",
    },
  },
  tabs: {
    orders: "pedidos",
    crew: "equipo, personal",
    closedDays: "dias cerrados",
    perhapsClosedDays: "festivos, feriados",
    places: "lugares",
    prices: "precios",
  },

  // Words in cells
  yes: "si, s, verdadero, x, cerrado, hecho, terminado",
  no: "no, n, falso, abierto, pendiente, todavia no",
  nothing: "nada, ninguno, ninguna, sin dato, s d, s n, sin contar, no contado, pendiente",
  ditto: "idem, id, igual, lo mismo, el mismo",
  totals: "total, totales, subtotal, sub total, total general, gran total, suma",
  about: "unos, unas, aprox, aproximadamente, cerca de, alrededor de, mas o menos, casi",
  dozen: "docena, docenas, doc, dna",
  trays: `
    bandeja, bandejas, charola, charolas, caja, cajas, fila, filas, hilera, hileras, cama, camas,
    cubeta, cubetas, mazo, mazos`,
  of: "de",
  percent: "por ciento",
  moved: "movido, movidos, traslado, trasladado, trasladados",
  splitOff: "separado, separados, division, dividido, apartado",
  and: "y, e",
  either: "o, u",
  anyVariety: `
    cualquier, cualquiera, cualquier variedad, la que sea, indistinto, variedad`,
  everything: "todos, todas, todo",
  work: "hora, horas, hora de trabajo, mano de obra",
  per: "por",
  seedItems: "semilla, semillas, mazorca, mazorcas, nuez, nueces, hueso, huesos, fruto, frutos",

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "pua, hendidura, hendido",
    wedge: "pua terminal, pua term, terminal, hendidura terminal, cuna, cuna terminal, apical",
    side: "lateral, lat, pua lateral, hendidura lateral",
    veneer: "enchapado, enchape, enchapado lateral, enchape lateral",
    approach: "aproximacion",
    patch: "parche, ventana",
    green: "verde, parche verde",
    shield: "t, escudete, escudo, t invertida, t invertido",
    chip: "astilla, chip",
    softwood: "madera tierna, madera suave",
    stone: "epicotilo, hueso",
    hypocotyl: "hipocotilo, hipocotilar, hipocotiledonar, hipocotiledonal, fosforito",
    cutting: `
      estaca, estacas, esqueje, esquejes, ramilla, ramillas, estaca enraizada, estacas enraizadas`,
    seedling: `
      semilla, franco, pie franco, plantula, plantula de semilla, sin injertar, sin injerto`,
  },
  budding: "yema, yemas",
  graftFillers: "injerto, injertos, injertado, injertacion, inj, de, en, por, con, el, la",
  crops: {
    cocoa: "cacao",
    coffee: "cafe, cafeto",
    mango: "mango, mangos",
    rubber: "caucho, hule, hevea",
    cashew: "anacardo, maranon",
    avocado: "aguacate, aguacates, palta, palto",
    citrus: "citrico, citricos, naranja, naranjo, limon, limonero, mandarina, mandarino",
  },
  cropKinds: "naranja, naranjo, limon, limonero, mandarina, mandarino",

  // Units
  units: {
    centimetre: "centimetro, centimetros",
    metre: "metro, metros",
    inch: "pulgada, pulgadas",
    foot: "pie, pies",
    litre: "litro, litros",
    gallon: "galon, galones",
    gram: "gramo, gramos",
    kilogram: "kilo, kilos, kilogramo, kilogramos",
    pound: "libra, libras",
    tonne: "tonelada, toneladas",
    minute: "minuto, minutos",
    hour: "hora, horas",
    piece: "pieza, piezas, unidad, unidades",
    hundred: "cien, ciento",
    thousand: "mil, millar",
  },
};
