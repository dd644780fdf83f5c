// A length as it is typed, in the forms that a plant file takes: 2.5 m, 18 in, 6', 1 1/2 in.
const FORM = /^\s*(?:(?:([0-9]{1,4})[ -])?\s*([0-9]{1,4})\/([0-9]{1,4})(?![0-9.])\s*(.*)|([-+]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?)\s*(.*))$/s;

// {metres}, or {why} it is none. unit: of a bare number, or empty; lengths: metres in one of each unit by its spellings.
export function length(text, unit, lengths) {
  const form = FORM.exec(text);
  if (!form) return {why: `"${text.trim()}" does not start with a number`};
  const [, whole, over, under, afterFraction, number, after] = form;
  const value = over ? Number(whole ?? 0) + Number(over) / Number(under) : Number(number);
  if (!Number.isFinite(value)) return {why: `"${text.trim()}" is not a finite number`};
  const written = (over ? afterFraction : after).trim().replace('μ', 'µ');
  if (written.startsWith(',')) return {why: 'a comma in a number: write 1200 for twelve hundred and 1.2 for one and a fifth'};
  if (!written && value === 0) return {metres: 0};
  if (!written && !unit) return {why: 'a number without a unit'};
  const metres = lengths[written || unit];
  return metres === undefined ? {why: `unknown unit of length "${written}"`} : {metres: value * metres};
}
