/** Invented prices of the demo bench. */
export const demoOfferWords = {
  wren: { seller: 'the same shop, autumn sale', heating: 'heating mat' },
  dipper: { seller: 'another shop', lead: '1 m leads and fuse' },
};
