/**
 * What to do when a pack shows heat, gas or fire. Our words, after ERG 2024 Guide 147, US Coast Guard Marine Safety
 * Alert 14-25 and Larsson et al., Sci. Rep. 7:10018 (2017).
 */
export const smokeWords = {
  button: 'If it smokes',
  title: 'Smoke, hiss, sweet smell, or a case too hot to hold',
  steps: [
    'Leave it where it is. Do not carry it, open it or cool it by hand.',
    'Get everyone out of the room and stay out of the smoke: it is toxic and can catch fire.',
    'Close the door behind you if that costs no time.',
    'Call the fire service: 112, 999, 911 or your local number.',
    'Tell them: lithium-ion battery, lithium iron phosphate, and its energy.',
  ],
  energy: (energy: string) => `This pack: about ${energy}.`,
  after:
    'It can flare up again hours or weeks later. Powder or CO₂ may knock flames down but do not cool; water cools. Leave that to the fire service. Nobody goes back in until they say so.',
};
