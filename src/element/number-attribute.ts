/** A number in an attribute. A text that is none is kept as it is: the planner then says what is wrong with it. */
export const numberAttribute = {
  fromAttribute(text: string | null): number | string | null {
    const value = text === null || text.trim() === '' ? Number.NaN : Number(text);
    return Number.isNaN(value) ? text : value;
  },
};
