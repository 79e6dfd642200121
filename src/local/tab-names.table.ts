// Made by npm run words; a test holds it equal.

/** What the tab of each smaller table may be called: small letters, no accents, a comma between. */
export const TAB_NAMES = {
  orders:
    "orders, order, open orders, order book, order list, commandes, commande, pedidos, encomendas, pesanan, daftar pesanan",
  crew: "crew, equipe, personnel, equipo, personal, equipa, pekerja, tim",
  closedDays:
    "closed days, days closed, jours fermes, jours de fermeture, dias cerrados, dias fechados, hari libur",
  places: "places, emplacements, lugares, locais, tempat",
  prices: "prices, prix, precios, precos, harga",
};
