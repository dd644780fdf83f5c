// What the plant file says of one part, as fields: values as they are typed, lists as rows, parts below it as links; what is not written can be added.
import {ask, changePlant} from './server.js';
import {element} from './element.js';

const SINGLE = ['amount', 'whole', 'text', 'word', 'yes_no', 'id'];
const WAITS = 'Not sent: the studio is not answering. It is kept in this page and will be sent.';
const NAMES = {runs: 'Tube', inlets: 'Inlet', points: 'Point', stations: 'Receiver station', dusts: 'Dust', tubes: 'Tube size', hoses: 'Hose', tools: 'Tool', bleeds: 'Bleed', held: 'Held point'};
let numbered = 0;

// What is wrong, said at the place itself: without its line in the file, and without the path that leads there.
const here = (why, path) => why.replace(/^line \d+, column \d+: /, '').replace(new RegExp(`^${path.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(\\.value)?: `), '');

export class Figures {
  // page: {version, adopt, load, unsent, notAnswering, show(path), around(): elements beside the head, below(): element below it}
  constructor(box, page) {
    this.box = box;
    this.page = page;
    this.rows = [];
    this.path = null;
    // In a place of its own, so that nothing moves under a pointer when one leaves a field.
    box.addEventListener('focusin', event => {
      const help = event.target.getAttribute('aria-describedby') ?? '';
      const words = help && document.getElementById(help)?.textContent || event.target.title;
      if (words && box.querySelector('.told')) box.querySelector('.told').textContent = words;
    });
  }

  hide() { this.box.hidden = true; this.path = null; this.signature = ''; }

  async show(path) {
    const part = await ask('part', '/api/part', {path});
    if (!part) return;
    const signature = JSON.stringify([part.path, part.written, ...part.values.map(line => shape(line))]);
    this.box.hidden = false;
    this.box.dataset.version = this.page.version();
    if (this.signature === signature && part.written) { this.rows.forEach((row, i) => row.renew(part.values[i])); return; }
    if (this.path === path && !part.written) return;
    this.path = path;
    this.signature = signature;
    this.build(part);
  }

  build(part) {
    const steps = [...part.above, {path: part.path, key: part.path.slice(part.above.at(-1)?.path.length ?? 0).replace(/^\./, '')}];
    const [section, id] = steps.length === 3 ? [steps[1].key, steps[2].key] : [];
    const title = !part.path ? 'The whole plant' : section && NAMES[section] ? `${NAMES[section]} ${id}` : steps.at(-1).key;
    const way = part.above.length ? element('nav', {class: 'way cap', 'aria-label': 'Around this part'},
      ...part.above.map(one => element('button', {type: 'button', on: () => this.page.show(one.path)}, one.path ? one.key : 'The whole plant'))) : '';
    const why = element('p', {class: 'why', role: 'alert'});
    this.why = why;
    const told = element('p', {class: 'told cap', tabindex: '0', role: 'note'}, 'What a figure means stands here while one is at it.');
    const body = part.written || part.kind === 'named' ? this.written(part) : this.draft(part);
    this.box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, title), ...this.page.around(part.path)), way, ...this.page.below(), told,
      ...(part.written ? [] : part.ways.filter(words => !words.startsWith('At most')).map(words => element('p', {class: 'cap'}, `${words}.`))), ...body, why);
    if (this.wanted) { this.box.querySelector(`[data-path="${CSS.escape(this.wanted)}"]`)?.focus(); this.wanted = null; }
  }

  // ---------------------------------------------------------------- what is written

  written(part) {
    const named = part.kind === 'named';
    const shown = part.values.filter(line => line.written);
    this.rows = part.values.map(line => line.written ? this.line(line, named || !line.needed) : {row: '', renew() {}});
    const body = this.rows.filter(row => row.row).map(row => row.row);
    if (!shown.length) body.push(element('p', {class: 'cap'}, named ? 'None yet.' : 'Nothing is written here.'));
    if (named) { body.push(this.newEntry(part)); return body; }
    const rest = part.values.filter(line => !line.written);
    if (rest.length) body.push(this.more(rest));
    return body;
  }

  // What else may be said here.
  more(rest) {
    const choice = element('select', {'aria-label': 'What else may be said here', class: 'more'}, element('option', {value: ''}, 'Say more of it'),
      ...rest.map(line => element('option', {value: line.path, title: line.help}, line.key)));
    const place = element('div', {});
    choice.addEventListener('change', () => {
      const line = rest.find(one => one.path === choice.value);
      if (!line) { place.replaceChildren(); return; }
      if (line.kind === 'group' || line.kind === 'named') { this.page.show(line.path); return; }
      const editor = draft(line);
      place.replaceChildren(editor.row, element('div', {class: 'acts'}, element('button', {type: 'button', on: () => {
        const value = editor.value();
        if (value === undefined) { this.why.textContent = `${line.key}: nothing is typed yet.`; return; }
        this.do({how: 'add', path: line.path, value}, line.path);
      }}, 'Add it')));
      place.querySelector('input, select, textarea')?.focus();
    });
    return element('div', {class: 'addition'}, choice, place);
  }

  newEntry(part) {
    const id = element('input', {'aria-label': `Name of a new ${part.entry}`, value: next(part), autocomplete: 'off'});
    const go = event => { event.preventDefault(); if (id.value.trim()) this.page.show(part.path ? `${part.path}.${id.value.trim()}` : id.value.trim()); };
    const form = element('form', {class: 'acts'}, id, element('button', {}, `New ${part.entry}`));
    form.addEventListener('submit', go);
    return form;
  }

  // A row of what is written: {row, renew}.
  line(line, removable) {
    if (SINGLE.includes(line.kind) || line.kind === 'yaml') return this.single(line, removable);
    if (line.kind === 'place' || line.kind === 'list' && !line.item.length) return this.several(line, removable);
    if (line.kind === 'list') return this.list(line, removable);
    const text = element('span', {class: 'sum'}, line.text || 'nothing in it');
    const row = element('div', {class: 'row'}, element('button', {type: 'button', class: 'into', title: line.help, 'data-path': line.path, on: () => this.page.show(line.path)}, line.key), text, this.away(line, removable && line.kind !== 'named'));
    return {row, renew: newer => { text.textContent = newer.text || 'nothing in it'; }};
  }

  away(line, removable) {
    return removable ? element('button', {type: 'button', class: 'away', 'aria-label': `Take away ${line.key || line.text}`, on: () => this.do({how: 'remove', path: line.path.replace(/\.value$/, line.sourced ? '' : '.value')})}, '−') : '';
  }

  // One value: typed, chosen or, as a last resort, as the file writes it. What is being typed goes on standing on the value it began with, so that another one is noticed.
  single(line, removable, label = line.key) {
    const unsent = this.page.unsent;
    const input = control(line, label, unsent.typed(line.path) ?? line.text);
    const also = element('small', {class: 'also'}, line.also);
    const unit = element('span', {class: 'unit'}, inUnit(line));
    const why = element('span', {class: 'why', role: 'alert'}, unsent.typed(line.path) === undefined ? '' : WAITS);
    const help = element('small', {class: 'help', id: `help-${++numbered}`}, helping(line));
    input.field.setAttribute('aria-describedby', help.id);
    input.field.dataset.path = line.path;
    const renew = newer => {
      also.textContent = newer.also;
      unit.textContent = inUnit(newer);
      if (input.field.value === newer.text) why.textContent = '';
      if (input.field.value === line.text || input.field.value === newer.text) { input.field.value = newer.text; line = newer; return; }
      if (newer.text !== line.text) why.textContent = `It is ${newer.text} by now.`;
    };
    input.field.addEventListener('change', async () => {
      const typed = input.field.value;
      const sent = {path: line.path, was: line.text, value: typed, plain: line.plain};
      const result = await changePlant('/api/value', {version: this.page.version(), ...sent});
      if (result.away) { unsent.keep(sent); why.textContent = WAITS; this.page.notAnswering(); return; }
      if (result.ok) { why.textContent = ''; line = {...line, text: typed}; await this.page.adopt(result.content); return; }
      why.textContent = here(result.content.why, line.path);
      if (!result.stale) return;
      const now = await ask('part', '/api/part', {path: this.path});
      line = now?.values.find(one => one.path === line.path) ?? line;
      this.page.load();
    });
    input.field.addEventListener('keydown', event => { if (event.key === 'Escape') { input.field.value = line.text; why.textContent = ''; input.field.blur(); } });
    const row = element('label', {class: 'row'}, element('span', {}, label, unit), ...input.nodes, this.away(line, removable), also, help, why);
    if (line.sourced) return {row: element('div', {}, row, this.source(line)), renew};
    return {row, renew};
  }

  // Where a required value comes from.
  source(line) {
    const input = element('input', {value: line.source, 'aria-label': `Source of ${line.key}`, placeholder: 'where it comes from', autocomplete: 'off'});
    input.addEventListener('change', () => {
      const long = line.path.endsWith('.value');
      if (long) this.do({how: 'set', path: line.path.replace(/\.value$/, '.source'), value: input.value});
      else this.do({how: 'set', path: line.path, value: {value: line.text, source: input.value}});
    });
    return element('label', {class: 'row source'}, element('span', {class: 'cap'}, 'source'), input);
  }

  // A place, or a list of fixed length: its values side by side.
  several(line, removable) {
    const fields = line.parts.map((part, i) => this.single({...part, help: ''}, false, part.key ? `${line.key} ${part.key}` : `${line.key} ${i + 1}`));
    const row = element('fieldset', {class: 'several', title: line.help}, element('legend', {}, line.key || 'one', this.away(line, removable)), ...fields.map(one => one.row));
    return {row, renew: newer => fields.forEach((one, i) => one.renew({...newer.parts[i], help: ''}))};
  }

  // A list: a row for each item, and one to add another.
  list(line, removable) {
    const item = line.item[0];
    const rows = line.parts.map((part, i) => this.line({...part, key: item.kind === 'group' ? `${line.key} ${i + 1}` : part.key}, true));
    const editor = draft({...item, key: ''}, `New ${line.key}`);
    const add = element('div', {class: 'acts'}, editor.row, element('button', {type: 'button', on: () => {
      const value = editor.value();
      if (value === undefined) { this.why.textContent = `${line.key}: nothing is typed yet.`; return; }
      this.do({how: 'append', path: line.path, value}, line.path);
    }}, 'One more'));
    const fold = item.kind === 'group' ? element('details', {}, element('summary', {}, 'One more'), add) : add;
    const row = element('fieldset', {class: 'list', title: line.help}, element('legend', {}, line.key, this.away(line, removable)), ...rows.map(one => one.row), fold);
    return {row, renew: newer => rows.forEach((one, i) => one.renew({...newer.parts[i], key: item.kind === 'group' ? `${line.key} ${i + 1}` : newer.parts[i].key}))};
  }

  // ---------------------------------------------------------------- what is not written yet

  draft(part) {
    const like = part.alike.map(one => element('button', {type: 'button', on: () => this.do({how: 'like', path: part.path, value: one.path})}, one.words));
    let editors = [];
    const place = element('div', {});
    const fill = values => {
      const first = values.filter(line => line.needed || line.oneOf);
      const rest = values.filter(line => !(line.needed || line.oneOf) && line.kind !== 'group' && line.kind !== 'named');
      editors = [];
      const rows = lines => lines.map(line => { const one = draft(line); editors.push([line.key, one]); return one.row; });
      place.replaceChildren(...rows(first), ...(rest.length ? [element('details', {}, element('summary', {}, 'More, where it is known'), ...rows(rest))] : []));
      for (const [key, one] of editors) if (key === 'kind' && this.kind) { one.set(this.kind); one.row.hidden = true; }
    };
    const kinds = part.kinds.length ? element('label', {class: 'row'}, element('span', {}, 'kind'), element('select', {'aria-label': 'Which kind'}, ...part.kinds.map(word => element('option', {value: word}, word)))) : '';
    kinds && kinds.querySelector('select').addEventListener('change', async event => {
      this.kind = event.target.value;
      const other = await ask('part', '/api/part', {path: part.path, of: this.kind});
      if (other) fill(other.values);
    });
    this.kind = part.kinds[0] ?? '';
    fill(part.values);
    const value = () => {
      if (part.kind !== 'group') return editors[0][1].value();
      const keys = editors.map(([key, one]) => [key, one.value()]).filter(([, said]) => said !== undefined);
      return Object.fromEntries(keys);
    };
    return [element('p', {class: 'cap'}, 'Not written yet. Fill in what it has, or take it over and change it then.'),
      ...(like.length ? [element('div', {class: 'acts'}, ...like)] : []), kinds, place,
      element('div', {class: 'acts'}, element('button', {type: 'button', class: 'put', on: () => this.do({how: 'add', path: part.path, value: value() ?? ''})}, 'Add it'))];
  }

  async do(body, focus) {
    const result = await changePlant('/api/value', {version: this.page.version(), ...body});
    if (result.away) { this.why.textContent = 'Not done and not kept: the studio is not answering. What is typed stays here; press again once it answers.'; this.page.notAnswering(); return; }
    if (!result.ok) { this.why.textContent = here(result.content.why, body.path ?? ''); if (result.stale) this.page.load(); return; }
    this.why.textContent = '';
    this.wanted = focus ?? null;
    const gone = body.how === 'remove' && this.path.startsWith(body.path);
    await this.page.adopt(result.content);
    if (gone) this.page.show(this.path.includes('.') ? this.path.slice(0, this.path.lastIndexOf('.')) : '');
  }
}

const shape = line => [line.path, line.kind, line.written, line.parts.map(shape)];

// The next name behind the last one: D2 after D1; the first letter of what it is for the first.
function next(part) {
  const taken = part.values.map(line => line.key);
  const last = taken.at(-1) ?? `${(part.entry[0] ?? 'x').toUpperCase()}0`;
  const stem = last.replace(/[0-9]+$/, '');
  let number = Number(last.slice(stem.length) || 1);
  do number++; while (taken.includes(`${stem}${number}`));
  return `${stem}${number}`;
}

function helping(line) {
  return [line.help, line.range && `${line.range}.`, line.otherwise && !line.written ? `Otherwise ${line.otherwise}.` : ''].filter(Boolean).join(' ');
}

// Of a number that is typed without one.
const inUnit = line => line.unit ? `, ${line.unit}` : '';

// The control of one value: {field, nodes}.
function control(line, label, text) {
  if (line.kind === 'word' || line.kind === 'yes_no') {
    const words = line.kind === 'yes_no' ? ['yes', 'no'] : line.choices;
    const known = {true: 'yes', false: 'no'}[text] ?? text;
    const field = element('select', {'aria-label': label}, ...[...new Set(['', ...words, known])].filter(word => word || !known).map(word => element('option', {value: word}, word || '–')));
    field.value = known;
    return {field, nodes: [field]};
  }
  if (line.kind === 'yaml' || text.length > 60) {
    const field = element('textarea', {'aria-label': label, rows: '3', spellcheck: 'false'});
    field.value = text;
    return {field, nodes: [field]};
  }
  const list = line.choices.length ? element('datalist', {id: `choices-${++numbered}`}, ...line.choices.map(one => element('option', {value: one}))) : null;
  const field = element('input', {value: text, 'aria-label': label, autocomplete: 'off', ...(line.example ? {placeholder: `as ${line.example}`} : {}), ...(list ? {list: list.id} : {})});
  return {field, nodes: list ? [field, list] : [field]};
}

// An empty value to fill in: {row, value(), set(text)}; undefined where nothing is typed.
function draft(line, label = line.key) {
  if (line.kind === 'place' || line.kind === 'list' && !line.item.length) {
    const parts = line.parts.map((part, i) => draft({...part, help: ''}, `${label} ${part.key || i + 1}`));
    const all = () => parts.map(one => one.value());
    return {row: element('fieldset', {class: 'several', title: line.help}, element('legend', {}, label), ...parts.map(one => one.row)), value: () => all().every(one => one === undefined) ? undefined : all().map(one => one ?? ''), set() {}};
  }
  if (line.kind === 'list') {
    let items = [];
    const place = element('div', {});
    const more = () => { const one = draft({...line.item[0], key: ''}, `${label} ${items.length + 1}`); items.push(one); place.append(one.row); };
    more();
    return {row: element('fieldset', {class: 'list', title: line.help}, element('legend', {}, label), place, element('button', {type: 'button', on: more}, 'One more')),
      value: () => { const all = items.map(one => one.value()).filter(one => one !== undefined); return all.length ? all : undefined; }, set() {}};
  }
  if (line.kind === 'group' || line.kind === 'named') {
    const lines = line.parts.filter(part => part.needed || part.oneOf || part.kind !== 'group' && part.kind !== 'named');
    const parts = lines.map(part => [part.key, draft(part, `${label} ${part.key}`.trim())]);
    const value = () => { const all = parts.map(([key, one]) => [key, one.value()]).filter(([, said]) => said !== undefined); return all.length ? Object.fromEntries(all) : undefined; };
    return {row: parts.length ? element('fieldset', {class: 'list', title: line.help}, element('legend', {}, label), ...parts.map(([, one]) => one.row)) : '', value, set() {}};
  }
  const input = control(line, label, '');
  const help = element('small', {class: 'help', id: `help-${++numbered}`}, helping(line));
  input.field.setAttribute('aria-describedby', help.id);
  return {row: element('label', {class: 'row'}, element('span', {}, line.key || label, inUnit(line)), ...input.nodes, help),
    value: () => input.field.value.trim() === '' ? undefined : input.field.value.trim(), set: text => { input.field.value = text; }};
}
