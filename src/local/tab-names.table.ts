// Made by npm run words; a test holds it equal.

/** What the tab of each smaller table may be called: small letters, no accents, a comma between. */
export const TAB_NAMES = {
  orders:
    "orders, order, open orders, order book, order list, commandes, commande, pesanan, daftar pesanan, encomendas, pedidos",
  crew: "crew, equipe, personnel, pekerja, tim, equipa, equipo, personal",
  closedDays:
    "closed days, days closed, jours fermes, jours de fermeture, hari libur, dias fechados, dias cerrados",
  places: "places, emplacements, tempat, locais, lugares",
  prices: "prices, prix, harga, precos, precios",
};
