import type { LanguageText } from "./language-text";

/** How to change or add words: language-text.ts. */
export const portuguese: LanguageText = {
  language: "Portuguese",
  locales: "pt, pt-BR",

  // Days: spellings beside those of the locales, then small words in a day
  months: {},
  weekdays: {
    monday: "segunda",
    tuesday: "terca",
    wednesday: "quarta",
    thursday: "quinta",
    friday: "sexta",
  },
  early: "inicio, comeco, principio",
  middle: "meados, meio, metade",
  late: "fim, fins, final, finais",
  week: "semana, sem",
  dateFillers: "de, do, da, em, o, a, dia",
  dayLetters: "d, m, a",
  upTo: "a, ate",

  // Headers of the records
  dayWords: "data, datas, dia, dt, quando",
  countWords: `
    numero, num, no, n, nr, n o, quantidade, qtd, qtde, qt, quant, contagem, total, mudas, plantas,
    unidades, un, quantas, quantos`,
  headerFillers: "de, do, da, dos, das, o, a, os, as, em, por, para",
  facts: {
    batch: `
      lote, lote no, no lote, no do lote, numero do lote, codigo do lote, cod lote, nome do lote,
      codigo lote, identificacao do lote, num lote`,
    fromLot: `
      lote de origem, lote origem, lote mae, lote de porta enxerto, lote porta enxerto,
      lote de porta enxertos, lote cavalo, lote de cavalos, do lote, lote de semeadura,
      lote da sementeira`,
    variety: `
      variedade, variedades, cultivar, clone, variedade enxertada, variedade copa, clone enxertado,
      copa, variedade do garfo, clone do garfo, garfo`,
    rootstock: `
      porta enxerto, porta enxertos, portaenxerto, portaenxertos, cavalo, cavalos,
      variedade do porta enxerto, tipo de porta enxerto, clone do porta enxerto,
      p e, pe`,
    crop: "cultura, especie, especies",
    method: `
      metodo, metodo de enxertia, tipo de enxertia, tipo de enxerto, tipo enx, tecnica,
      tecnica de enxertia, forma de propagacao, tipo de propagacao, metodo de propagacao`,
    place: `
      local, localizacao, canteiro, estufa, bancada, viveiro, telado, sombrite, casa de vegetacao,
      bloco, ripado, posicao, setor`,
    grafter: "enxertador, enxertadora, enxertado por, nome do enxertador",
    scionSource: `
      origem do garfo, origem garfo, origem dos garfos, origem garfos, origem da borbulha,
      origem borbulha, origem das borbulhas, origem borbulhas, fonte de garfos, matriz,
      fonte de borbulhas, jardim clonal, planta matriz, planta mae, borbulheira,
      procedencia do garfo, procedencia garfo, arvore matriz, garfos de`,
    culled: `
      descarte, descartes, descartadas, descartados, mortas, mortos, perdas, mortalidade, refugo,
      eliminadas, mudas mortas, mudas descartadas, baixas`,
    dispatched: `
      expedidas, expedicao, vendidas, vendidos, vendas, entregues, entregas, saidas, saida,
      despachadas, mudas vendidas, mudas entregues, enviadas`,
    closed: "encerrado, encerrada, fechado, lote encerrado, finalizado, data de encerramento",
    note: "nota, notas, observacao, observacoes, obs, comentario, comentarios",
    eventDay: "data, dia, data da atividade, data atividade",
    eventStep: "etapa, atividade, tarefa, evento, operacao, servico, fase",
    eventCount: "quantidade, qtd, qtde, numero, contagem, mudas, plantas, no de mudas",
    eventPerson: "pessoa, quem, responsavel, trabalhador, feito por, funcionario, operador",
  },
  steps: {
    sowing: {
      name: "semeadura, semeio, plantio, semeado, semeada",
      day: `
        data semeadura, data da semeadura, data de semeadura, dt semeadura, semeado em,
        data plantio, data do plantio, data semeio`,
      count: `
        sementes, sementes semeadas, semeadas, no sementes, qtd sementes, qtd semeada, qtde semeada,
        numero de sementes`,
    },
    germination: {
      name: "germinacao, germ, emergencia, nascimento",
      day: "data germinacao, data da germinacao, dt germinacao, germinou em, data emergencia",
      count: `
        germinadas, germinados, plantulas, nascidas, sementes germinadas, qtd germinada,
        qtd germinadas, emergidas`,
    },
    grafting: {
      name: "enxertia, enxerto, enxertado, enxertada, enxertar, borbulhia, garfagem",
      day: `
        data enxertia, data da enxertia, data de enxertia, dt enxertia, enxertado em, data enxerto,
        data do enxerto, dt enxerto`,
      count: `
        enxertos, enxertadas, enxertados, enxertos feitos, mudas enxertadas, plantas enxertadas,
        no enxertos, qtd enxertos, qtd enxertada, qtde enxertada, qtd enxertadas,
        numero de enxertos, enxertos realizados`,
    },
    "first release": {
      name: `
        desamarrio, retirada da fita, abertura da fita, retirada do fitilho, desvendamento,
        primeira abertura, retirada do saquinho, corte do fitilho`,
      day: "data desamarrio, data retirada da fita, data da retirada da fita, dt desamarrio",
    },
    "bud break": {
      name: "brotacao, brotacao da gema, quebra da gema, gema brotada, brotacao das gemas",
      day: "data brotacao, data da brotacao, brotou em, dt brotacao",
      count: "brotados, brotadas, gemas brotadas",
    },
    "take count": {
      name: "pegamento, pega, contagem de pegamento, avaliacao de pegamento, contagem do pegamento",
      day: `
        data pegamento, data do pegamento, data contagem, data da contagem, dt pegamento,
        contado em, data avaliacao`,
      count: `
        pegos, pegas, enxertos pegos, enxertos vivos, no pegos, qtd pegos, pegamentos, qtd pegas,
        mudas pegas, enxertos vingados, vingados`,
    },
    "first flush": {
      name: "primeiro fluxo, primeiro lancamento, fluxo, primeira brotacao foliar, lancamento",
      day: "data fluxo, data primeiro fluxo, data do fluxo, data lancamento",
    },
    "flush hardening": {
      name: `
        endurecimento, amadurecimento do fluxo, fluxo maduro, lignificacao, maturacao do fluxo`,
      day: "data endurecimento, endurecido em",
    },
    branching: {
      name: "ramificacao, ramificado, esgalhamento",
      day: "data ramificacao, ramificou em",
    },
    "union closed": {
      name: "soldadura, solda, uniao soldada, uniao fechada, cicatrizacao",
      day: "data soldadura, data da soldadura, soldado em, data cicatrizacao",
    },
    ready: {
      name: "pronto, pronta, pronta para venda, apta para venda, muda pronta, acabamento",
      day: "data pronta, data pronto, pronta em, pronto em, data muda pronta, dt pronta",
      count: "prontas, prontos, mudas prontas, mudas aptas, plantas prontas, qtd prontas",
    },
  },

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "sem, semea, semei, plantio, plantad, semente",
    seed: "sementes, caroco, castanha, amendoa",
    begin: "inicio, inicial, comeco",
    germinate: "germ, nasc, emerg",
    container: "saco, saquinho, tubete, vaso",
    pot: "transp, repic, ensacol, envas",
    graft: "enx, enxert, garfag",
    bud: "borbulh, placa, gema",
    loosen: "afroux, abertur, abriu, soltur, soltou",
    takeOff: "tirou, tirar, retir, desamarr, desfit",
    wrap: "fita, fitilh, plastic, amarr",
    burst: "brot",
    shoot: "broto",
    flush: "lancament, fluxo",
    union: "solda, uniao, cicatriz",
    cutBack: "decep, decapit, despont",
    harden: "rustif, aclimat, sol, endurec",
    alive: "viv, viva, vivo, sobreviv",
    take: "peg, pega, pegou, sucesso",
    check: "verific, aval, leitur, contagem, revis",
    ready: "pront, apto, apta, vendav, comercia",
    gone: "venda, vendid, vendeu, entreg, said, expedi, saiu",
    dead: "mort, perd, refug, descart, baixa, falha",
    rest: "saldo, estoque, resta, reserv, dispon",
    cutting: "estaca, estaquia",
    root: "enraiz",
    cut: "cort, colet",
    scion: "garfo, ponteir, copa, vareta",
    garden: "jardim, matriz",
    source: "origem, proced, fonte",
    batch: "lote",
    code: "codigo, cod, id, identific, ref",
    variety: "variedad, var, clone, cultivar, genotip",
    stock: "cavalo, pe, porta",
    place: "canteir, estufa, telado, viveir, talhao, bancada, local, quadra",
    by: "por",
    grafter: "enxertador",
    person: "operador, funcionari, respons, quem, equipe",
    kind: "tipo, metodo, tecnica, forma, modo",
    crop: "especie, cultura",
    customer: "cliente, comprador, destino, fregues",
    closed: "fechad, encerrad",
    note: "nota, observ, obs",
    measure: `
      altura, diametro, porcent, preco, custo, horas, assinatur, telefone, unidade, clima,
      motivo, sinal, idade`,
    aside: "aos, entrada, lancad, feit, realizad, total, nome, colocad",
    meantFor: "para, p, pra",
    dayUnit: "d, dia, dias",
    weekUnit: "semana",
    monthUnit: "mes, meses",
    first: "primeir",
    later: "segund, terceir, ultim",
  },

  // Headers and names of the other tables
  name: "nome",
  from: "de",
  tables: {
    orders: {
      order: "pedido, no pedido, encomenda",
      customer: "cliente, comprador",
      variety: "variedade, clone",
      wanted: "quantidade, qtd, qtde",
      by: "prazo, entrega, data de entrega",
      delivered: "entregue, entregues",
      closed: "encerrado",
    },
    crew: {
      person: "enxertador, empregado",
      tasks: "tarefas, tarefa, etapas",
      hours: "horas por dia, horas dia, horas",
      offFrom: "ausente de, folga de",
      offTo: "ausente ate, folga ate",
    },
    closedDays: {
      day: "dia, dias, data",
      to: "ate",
    },
    prices: {
      item: "artigo, produto, insumo",
      price: "preco, preco unitario, custo",
      per: "por, unidade",
    },
    places: {
      holds: "capacidade, cabem, comporta",
    },
    timetable: {
      method: "metodo, cultura",
      step: "etapa, passo, tarefa",
      after: "depois de, apos, contado desde",
      from: "a partir do dia, dia mais cedo",
      usual: "dia usual, dia habitual, dias, dia",
      by: "ate o dia, dia mais tarde",
      counted: "contado, contagem",
      kept: "restam de 100, ficam de 100",
      perPersonHour: "por pessoa hora, por hora, mudas por hora",
      needs: "precisa, materiais, insumos",
      caution: "precaucao, precaucoes, seguranca",
      source: "fonte, fontes",
    },
  },
  tabs: {
    orders: "encomendas, pedidos",
    crew: "equipe, equipa",
    closedDays: "dias fechados",
    perhapsClosedDays: "feriados",
    places: "locais",
    prices: "precos",
  },

  // Words in cells
  yes: "sim, s, verdadeiro, x, encerrado, feito, fechado",
  no: "nao, n, falso, aberto, ainda nao",
  nothing: "nada, nenhum, nenhuma, sem dado, s d, nao contado, a contar, pendente",
  ditto: "idem, id, o mesmo, a mesma",
  totals: "total, totais, subtotal, sub total, total geral, soma",
  about: "cerca de, uns, umas, aprox, aproximadamente, por volta de, mais ou menos, quase",
  dozen: "duzia, duzias, dz",
  trays: `
    bandeja, bandejas, caixa, caixas, fileira, fileiras, canteiro, canteiros, linha, linhas, feixe,
    feixes, tubete, tubetes`,
  of: "de",
  percent: "por cento",
  moved: "mudado, mudados, transferido, transferidos, transferencia",
  splitOff: "separado, separados, divisao, dividido, repartido",
  and: "e",
  either: "ou",
  anyVariety: "qualquer, qualquer uma, qualquer variedade, tanto faz, variedade",
  everything: "todos, todas, tudo",
  work: "hora, horas, hora de trabalho, mao de obra",
  per: "por",
  seedItems: "semente, sementes, vagem, vagens, noz, nozes, caroco, carocos, fruto, frutos",

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "fenda, fenda cheia, fenda simples",
    wedge: "topo, fenda terminal, fenda no topo, terminal, apical",
    side: "lateral, fenda lateral",
    veneer: "placagem",
    approach: "encostia, encosto, encostia lateral",
    patch: "placa, janela, janela aberta, placa em janela, placa em janela aberta, madura",
    green: "verde, placa verde",
    shield: "t, t invertido, t inv, t normal, escudo",
    chip: "chip, lasca",
    softwood: "lenho tenro, herbacea",
    stone: "epicotilo, caroco",
    hypocotyl: "hipocotilo, hipocotiledonar",
    cutting: `
      estaquia, estaca, estacas, estaca enraizada, estacas enraizadas, mini estaquia,
      miniestaquia, miniestaca, miniestacas`,
    seedling: "semente, pe franco, seminal, muda de semente, sem enxertia, sem enxerto",
  },
  budding: "borbulhia, borbulha",
  graftFillers: `
    garfagem, garf, enxertia, enxerto, enxertado, enxertada, enx, em, de, do, da, no, na, por,
    mudas, muda`,
  crops: {
    cocoa: "cacau, cacaueiro",
    coffee: "cafe, cafeeiro",
    mango: "manga, mangas, mangueira",
    rubber: "seringueira, seringueiras",
    cashew: "caju, cajueiro",
    avocado: "abacate, abacateiro",
    citrus: "citros, laranja, laranjeira, limao, limoeiro, tangerina",
  },
  cropKinds: "laranja, laranjeira, limao, limoeiro, tangerina",

  // Units
  units: {
    centimetre: "centimetro, centimetros",
    metre: "metro, metros",
    inch: "polegada, polegadas",
    foot: "pe, pes",
    litre: "litro, litros",
    gallon: "galao, galoes",
    gram: "grama, gramas",
    kilogram: "quilo, quilos, quilograma, quilogramas",
    pound: "libra, libras",
    tonne: "tonelada, toneladas",
    minute: "minuto, minutos",
    hour: "hora, horas",
    piece: "peca, pecas, unidade, unidades",
    hundred: "cem, cento",
    thousand: "mil, milheiro",
  },
};
