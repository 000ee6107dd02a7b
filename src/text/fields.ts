/** What is said of text that was typed into a box. */
export const fieldWords = {
  elsewhere: (value: string) =>
    `Changed meanwhile in another tab: it now says ${value === '' ? 'nothing' : `“${value}”`}. What you type here takes its place.`,
  notANumber: (text: string) => `“${text}” is not a number: type digits with a point or a comma. It is not saved yet.`,
  notWhole: 'A whole number is needed here. It is not saved yet.',
  positive: 'A number above zero is needed here. It is not saved yet.',
  negative: 'A number of zero or more is needed here. It is not saved yet.',
  tooHot: 'Above 500 °C: that is no battery. It is not saved yet.',
  tooCold: 'Below absolute zero. It is not saved yet.',
  outOfRange: 'No such figure can be kept here. It is not saved yet.',
  atMost: (limit: string) => `At most ${limit} can be kept here. It is not saved yet.`,
  atLeast: (limit: string) => `At least ${limit} is needed here. It is not saved yet.`,
  stillNeeded: 'It cannot be left empty: what was there before still counts. Type another, or delete the whole test.',
};
