import type { LanguageText } from "./language-text";

/** How to change or add words: language-text.ts. */
export const indonesian: LanguageText = {
  language: "Indonesian",
  locales: "id",

  // Days: spellings beside those of the locales, then small words in a day
  months: {
    february: "pebruari, peb",
    march: "mrt",
    august: "agu, ags, agus, agust",
    september: "sept",
    november: "nopember, nop",
  },
  // "minggu" is both Sunday and week; beside a month's name it is Sunday.
  weekdays: {
    friday: "jum at",
    sunday: "ahad",
  },
  early: "awal",
  middle: "pertengahan, tengah, medio",
  late: "akhir",
  week: "minggu, mgg, mg, pekan",
  dateFillers: "tanggal, tgl, ke, bulan, bln, tahun, thn, pada, hari",
  dayLetters: "h, b, t",
  upTo: "sampai",

  // Headers of the records
  dayWords: "tanggal, tgl, tg, hari, waktu, kapan",
  countWords: `
    jumlah, jml, jlh, jmlh, banyak, banyaknya, total, batang, btg, btr, butir, pohon, phn, no,
    berapa, biji`,
  headerFillers: "di, yang, yg, dari, pada, untuk, per, dan",
  facts: {
    batch: `
      batch, no batch, kode batch, kelompok, no kelompok, kode kelompok, nama batch, partai,
      no partai, nomor batch, nomor kelompok, lot, no lot, kode lot`,
    fromLot: `
      dari lot, asal lot, lot asal, lot batang bawah, lot semai, batch asal, dari batch, asal batch,
      kelompok asal, lot induk, dari kelompok`,
    variety: `
      varietas, klon, kultivar, jenis klon, klon entres, klon batang atas, batang atas,
      varietas batang atas, entres, jenis entres, nama klon`,
    rootstock: `
      batang bawah, btg bawah, klon batang bawah, jenis batang bawah, bb, varietas batang bawah`,
    crop: "tanaman, jenis tanaman, komoditas",
    method: `
      metode, cara sambung, metode sambung, jenis sambungan, cara okulasi, teknik,
      cara penyambungan, metode penyambungan, cara perbanyakan`,
    place: `
      tempat, lokasi, bedeng, bedengan, no bedeng, no bedengan, naungan, rak, blok, petak,
      rumah kasa, rumah paranet, letak, rumah bibit`,
    grafter: `
      penyambung, tukang sambung, disambung oleh, juru sambung, okulator, nama penyambung,
      tukang okulasi, diokulasi oleh`,
    scionSource: `
      asal entres, sumber entres, kebun entres, entres dari, pohon induk, asal mata tunas,
      sumber mata tunas, asal batang atas, sumber batang atas`,
    culled: `
      mati, afkir, diafkir, jml mati, jumlah mati, bibit mati, dibuang, kematian, rusak, jml afkir`,
    dispatched: `
      disalurkan, penyaluran, terjual, dijual, dikirim, pengiriman, keluar, jml keluar, penjualan,
      jml terjual, jml kirim, tersalur`,
    closed: "selesai, ditutup, tutup, tgl selesai, sudah selesai",
    note: "catatan, keterangan, ket, cat",
    eventDay: "tanggal, tgl, hari, tgl kegiatan, tanggal kegiatan",
    eventStep: "kegiatan, pekerjaan, tahap, tahapan, langkah, jenis kegiatan",
    eventCount: "jumlah, jml, banyaknya, jml bibit, jumlah bibit, jml batang",
    eventPerson: "orang, petugas, pelaksana, pekerja, oleh, nama pekerja, siapa",
  },
  steps: {
    sowing: {
      name: "semai, penyemaian, persemaian, tanam benih, disemai, tabur",
      day: "tgl semai, tanggal semai, tgl tanam, tgl penyemaian, disemai tgl, tgl tabur",
      count: `
        benih, jml benih, jumlah benih, benih disemai, jml semai, biji disemai, jml biji,
        benih ditanam, jumlah semai`,
    },
    germination: {
      name: "kecambah, perkecambahan, berkecambah, tumbuh benih, daya kecambah",
      day: "tgl kecambah, tanggal kecambah, tgl berkecambah",
      count: `
        jml kecambah, jumlah kecambah, jml berkecambah, benih tumbuh, benih berkecambah, semaian`,
    },
    grafting: {
      name: "sambung, penyambungan, sambung pucuk, okulasi, disambung, diokulasi, grafting",
      day: `
        tgl sambung, tanggal sambung, tgl okulasi, tanggal okulasi, disambung tgl, tgl penyambungan,
        tgl sambung pucuk, tanggal penyambungan`,
      count: `
        jml sambung, jumlah sambung, jml sambungan, jumlah sambungan, jml disambung, sambungan,
        jml okulasi, jumlah okulasi, bibit disambung, okulasi dibuat`,
    },
    "first release": {
      name: `
        buka ikatan, buka plastik, buka sungkup, buka tali, pembukaan ikatan, buka ikatan pertama,
        lepas ikatan, buka okulasi, pembukaan sungkup`,
      day: "tgl buka, tgl buka ikatan, tanggal buka, tgl buka plastik, tgl buka sungkup",
    },
    "bud break": {
      name: "pecah tunas, tunas pecah, mata tunas pecah, bertunas, keluar tunas",
      day: "tgl pecah tunas, tgl bertunas, tanggal pecah tunas, tgl tunas",
      count: "jml bertunas, jumlah bertunas",
    },
    "take count": {
      name: "hitung jadi, sambungan jadi, pemeriksaan sambungan, hitung hidup, periksa sambungan",
      day: `
        tgl hitung, tanggal hitung, tgl periksa, tgl pemeriksaan, tgl hitung jadi, tgl hitung hidup,
        tanggal periksa`,
      count: `
        jadi, jml jadi, jumlah jadi, sambungan hidup, jml hidup, jumlah hidup, hidup, berhasil,
        jml berhasil, okulasi jadi, okulasi hidup, sambungan berhasil, sambungan tumbuh`,
    },
    "first flush": {
      name: "flush pertama, pupus pertama, trubus pertama, pupus, trubus, daun pertama",
      day: "tgl flush, tgl pupus, tgl trubus",
    },
    "flush hardening": {
      name: "daun tua, flush tua, pengerasan, pupus tua, daun mengeras",
      day: "tgl daun tua, tgl pengerasan",
    },
    branching: {
      name: "percabangan, bercabang, cabang",
      day: "tgl bercabang",
    },
    "union closed": {
      name: "sambungan menyatu, pertautan, menyatu, sambungan rapat, pertautan sempurna",
      day: "tgl menyatu, tgl pertautan",
    },
    ready: {
      name: "siap, siap salur, siap jual, siap tanam, bibit siap",
      day: "tgl siap, tanggal siap, tgl siap salur, tgl siap jual, tgl siap tanam",
      count: "jml siap, jumlah siap, jml siap salur, jml siap jual, bibit siap salur, siap btg",
    },
  },

  // Parts of headers: a word of four letters or more is how longer ones begin
  parts: {
    sow: "semai, disemai, penyemaian, tabur, tanam, ditanam, penanaman",
    seed: "biji, benih",
    begin: "mulai, awal",
    germinate: "kecambah, berkecambah, perkecambahan, tumbuh, serdadu, semaian",
    container: "polibag, polybag, kantong, pot",
    pot: "pindah, pemindahan, sapih, penyapihan",
    graft: `
      sambung, disambung, penyambungan, okulasi, diokulasi, grafting, tempel, penempelan,
      ditempel`,
    bud: "mata",
    loosen: "buka, dibuka, pembukaan, longgar",
    takeOff: "lepas, dilepas, pelepasan",
    wrap: "tali, plastik, sungkup, ikat",
    burst: "pecah, bertunas, muncul",
    shoot: "tunas",
    flush: "flush, pupus, trubus",
    union: "menyatu, tautan, pertautan",
    cutBack: "lengkung, pelengkungan, pangkas, pemangkasan, pemotongan",
    harden: "adaptasi, aklimat, penguatan",
    alive: "hidup",
    take: "jadi, berhasil, keberhasilan",
    check: "hitung, perhitungan, pengamatan, periksa, pemeriksaan, cek",
    ready: "siap, layak",
    gone: `
      jual, terjual, dijual, penjualan, keluar, kirim, dikirim, terkirim, salur, tersalur,
      disalurkan, penyaluran, distribusi`,
    dead: "mati, gagal, afkir, busuk, rusak",
    rest: "sisa, stok, tersedia",
    cutting: "stek, setek",
    root: "berakar, perakaran",
    cut: "potong, dipotong, ambil, pengambilan, panen, petik",
    scion: "entres, entris, atas, pucuk",
    garden: "induk",
    source: "asal, dari, sumber",
    batch: "batch, lot, kelompok",
    code: "kode, nomor, nmr, id",
    variety: "varietas, klon",
    stock: "bawah",
    place: "petak, bedeng, naungan, lokasi, blok, kebun, rumah, screen",
    by: "oleh",
    grafter: "okulator, penyambung, penempel, pengokulasi, tukang",
    person: "petugas, pelaksana, pekerja, pembibit, regu, siapa",
    kind: "cara, metode, teknik, tipe",
    crop: "tanaman, komoditas",
    customer: "pembeli, pemesan, pelanggan, tujuan, penerima",
    closed: "ditutup",
    note: "catatan, ket, keterangan",
    measure: "persen, tinggi, panjang, diameter, harga, biaya, paraf, satuan, cuaca, umur, jam",
    aside: "bibit, bt, nama, sudah",
    meantFor: "untuk, utk",
    dayUnit: "hari, hr",
    weekUnit: "mgg, minggu",
    monthUnit: "bulan, bln",
    first: "pertama",
    later: "kedua, ketiga, terakhir, akhir",
  },

  // Headers and names of the other tables
  name: "nama",
  from: "dari",
  tables: {
    orders: {
      order: "pesanan, no pesanan",
      customer: "pelanggan, pembeli",
      variety: "varietas, klon",
      wanted: "jumlah",
      by: "tanggal, paling lambat",
      delivered: "dikirim",
      closed: "selesai",
    },
    crew: {
      person: "penyambung, karyawan",
      tasks: "tugas, pekerjaan",
      hours: "jam per hari, jam sehari, jam",
      offFrom: "libur dari, cuti dari",
      offTo: "libur sampai, cuti sampai",
    },
    closedDays: {
      day: "hari, tanggal",
      to: "sampai",
    },
    prices: {
      item: "barang, bahan",
      price: "harga, harga satuan, biaya",
      per: "satuan",
    },
    places: {
      holds: "kapasitas, muat, daya tampung",
    },
    timetable: {
      method: "metode, tanaman",
      step: "langkah, tahap, kegiatan",
      after: "setelah, sesudah, dihitung dari",
      from: "mulai hari, hari paling awal",
      usual: "hari biasa, biasanya, hari",
      by: "sampai hari, hari paling lambat",
      counted: "dihitung",
      kept: "sisa dari 100, tersisa dari 100",
      perPersonHour: "per orang jam, per jam, bibit per jam",
      needs: "kebutuhan, bahan, keperluan",
      caution: "perhatian, keselamatan",
      source: "sumber",
    },
  },
  tabs: {
    orders: "pesanan, daftar pesanan",
    crew: "pekerja, tim",
    closedDays: "hari libur",
    perhapsClosedDays: "libur, libur nasional",
    places: "tempat",
    prices: "harga",
  },

  // Words in cells
  yes: "ya, y, benar, x, sudah, selesai",
  no: "tidak, tdk, belum, blm, salah",
  nothing: "nihil, tidak ada, tdk ada, kosong, belum dihitung, blm dihitung, belum",
  ditto: "sda, s d a, sama, idem, sama dengan di atas",
  totals: "total, jumlah, jml, subtotal, sub total, jumlah total, total seluruh",
  about: "kira kira, sekitar, kurang lebih, lk, kl, hampir, perkiraan, sekira",
  dozen: "lusin, lsn",
  trays: "baki, kotak, bedeng, bedengan, baris, ikat, nampan, keranjang, peti, tray, petak",
  of: "isi",
  percent: "persen",
  moved: "dipindah, pindah, dipindahkan, pindahan",
  splitOff: "dipisah, pisah, dipecah, dipisahkan",
  and: "dan",
  either: "atau",
  anyVariety: "apa saja, mana saja, varietas apa saja, bebas, sembarang, varietas",
  everything: "semua",
  work: "jam, jam kerja, upah",
  per: "per",
  seedItems: "benih, biji, buah, tongkol",

  // Ways of propagation and crops, as a cell names them
  ways: {
    cleft: "celah, sambung celah",
    wedge: "pucuk, s pucuk, puncak, sp",
    side: "samping, ss",
    veneer: "veneer",
    approach: "susuan, susuhan, penyusuan, susu",
    patch: "cokelat, coklat, jendela",
    green: "hijau",
    shield: "t, huruf t, perisai",
    chip: "chip",
    softwood: "kayu lunak",
    stone: "epikotil",
    hypocotyl: "hipokotil, kepel, serdadu, fase serdadu, stadia serdadu",
    cutting: "stek, setek, stek batang, setek batang",
    seedling: "biji, semai, semaian, bibit semai, tanpa sambung",
  },
  budding: "okulasi, tempel, mata tempel",
  graftFillers: "sambung, sambungan, samb, smb, smbg, bibit, dari, asal, dengan",
  crops: {
    cocoa: "kakao",
    coffee: "kopi",
    mango: "mangga",
    rubber: "karet",
    cashew: "mete, jambu mete",
    avocado: "alpukat, avokad",
    citrus: "jeruk",
  },
  cropKinds: "nipis, keprok",

  // Units
  units: {
    centimetre: "sentimeter, senti",
    metre: "meter",
    inch: "inci",
    foot: "kaki",
    litre: "liter",
    gallon: "galon",
    gram: "gram",
    kilogram: "kilo, kilogram",
    pound: "pon",
    tonne: "ton",
    minute: "menit",
    hour: "jam",
    piece: "biji, buah",
    hundred: "ratus",
    thousand: "ribu",
  },
};
