// Two designs side by side: revisions, alternatives, the working copy.
import {ask, change, changePlant} from './server.js';
import {element} from './element.js';
import {letter} from './lettering.js';

const at = id => document.getElementById(id);

// Under what differs lies a band, as on the plan under what changed.
function band(place, pieces) {
  for (const {kind, id} of pieces) {
    const shown = place.querySelector(`[data-${kind}="${CSS.escape(id)}"] > :is(path, circle)`);
    if (!shown) continue;
    const under = shown.cloneNode();
    for (const name of ['stroke', 'stroke-width', 'stroke-dasharray', 'fill']) under.removeAttribute(name);
    under.setAttribute('class', 'band');
    shown.before(under);
  }
}

export class Compare {
  constructor(plan, say) {
    this.plan = plan;
    this.say = say;
    for (const id of ['before', 'after']) at(id).addEventListener('change', () => this.show());
    at('keepas').addEventListener('submit', event => { event.preventDefault(); this.keep(); });
  }

  async load() {
    const [revisions, alternatives] = await Promise.all([ask('revisions', '/api/revisions'), ask('alternatives', '/api/alternatives')]);
    if (!revisions || !alternatives) return;
    const designs = [['now', 'Working copy'], ...alternatives.map(one => [`a:${one.name}`, `Alternative ${one.name}`]), ...revisions.map(one => [`r${one.number}`, `Revision ${one.number}${one.note ? ': ' + one.note : ''}`])];
    for (const [id, first] of [['before', revisions.length ? `r${revisions[0].number}` : designs.at(-1)[0]], ['after', 'now']]) {
      const was = at(id).value;
      at(id).replaceChildren(...designs.map(([value, words]) => element('option', {value}, words)));
      at(id).value = designs.some(([value]) => value === was) ? was : first;
    }
    if (at('before').value === at('after').value && designs.length > 1) at('before').value = at('after').value === 'now' ? (revisions.length ? `r${revisions[0].number}` : designs.at(-1)[0]) : 'now';
    at('alternatives').replaceChildren(...alternatives.map(one => element('li', {}, `${one.name}, ${one.at.replace('T', ' ').replace('Z', ' UTC')} `,
      element('button', {type: 'button', on: () => this.takeUp(one.name)}, 'Work on from here'), ' ', element('button', {type: 'button', on: () => this.letGo(one.name)}, 'Let go of it'))));
    if (!alternatives.length) at('alternatives').replaceChildren(element('li', {class: 'none'}, 'None yet. Keep the plant as it stands by a name, change it, and compare both.'));
    await this.show();
  }

  async keep() {
    const result = await change('/api/alternative', {version: this.plan.version(), name: at('altname').value});
    at('kepthint').textContent = result.ok ? `Kept as ${at('altname').value}.` : result.content.why;
    if (result.ok) { at('altname').value = ''; this.load(); }
  }

  async letGo(name) {
    const result = await change('/api/alternative/letgo', {name});
    if (result.ok) this.load(); else this.say(result.content.why);
  }

  async takeUp(name) {
    const kept = await change('/api/alternative/text', {name});
    const result = kept.ok ? await changePlant('/api/text', {version: this.plan.version(), text: kept.content.text}) : kept;
    if (result.ok) { await this.plan.adopt(result.content); this.say(`Alternative ${name} is the working copy now. Back undoes that.`); this.load(); } else this.say(result.content.why ?? 'No such alternative.');
  }

  async show() {
    if (at('before').value === at('after').value) {
      at('differences').replaceChildren(element('p', {class: 'cap'}, 'Choose two different designs. A revision is accepted under Papers, an alternative is kept here by a name.'));
      return;
    }
    at('comparehint').textContent = 'solving both';
    at('differences').classList.add('stale');
    let both;
    try {
      both = await ask('compare', '/api/compare', {...this.plan.asked(), before: at('before').value, after: at('after').value});
    } catch (why) {
      at('comparehint').textContent = why.message;
      return;
    }
    if (!both) return;
    at('comparehint').textContent = '';
    at('differences').classList.remove('stale');
    const side = (one, id) => element('figure', {}, element('figcaption', {}, element('b', {}, at(id).selectedOptions[0].textContent), element('span', {}, ` ${one.verdict}`)), this.drawing(one));
    at('differences').replaceChildren(
      element('div', {class: 'pair'}, side(both.before, 'before'), side(both.after, 'after')),
      ...this.requirements(both), element('h3', {}, 'Cost and energy'), this.figures(both.cost, 'No figure of cost or energy differs by half a per cent.'), ...this.changed(both),
      element('h3', {}, 'Other figures'), this.figures(both.figures, 'No other figure of the sheets differs by half a per cent.', both.moreFigures), ...this.slight(both.slight));
    [...at('differences').querySelectorAll('.beside')].forEach((place, n) => band(place, both.pieces.filter(one => one.what !== (n ? 'gone' : 'new'))));
    for (const svg of at('differences').querySelectorAll('.beside svg')) letter(svg);
  }

  drawing(one) {
    const place = element('div', {class: 'beside'});
    if (one.drawing) place.innerHTML = one.drawing; else place.textContent = `No answer for this set: ${one.why}`;
    place.append(element('small', {}, one.set));
    return place;
  }

  // Those whose verdict differs.
  requirements(both) {
    const turned = both.findings.filter(one => one.turns);
    return [element('h3', {}, 'Requirements whose verdict differs'), turned.length ? this.judged(turned, 0) : element('p', {}, both.findings.length ? 'None.' : 'No requirement comes out differently.')];
  }

  changed(both) {
    const rest = both.findings.filter(one => !one.turns);
    return rest.length ? [element('h3', {}, 'Requirements whose margin differs'), this.judged(rest, both.more)] : [];
  }

  judged(rows, more) {
    const cell = one => element('td', {}, element('span', {class: one.marginClass, 'aria-hidden': 'true'}, one.glyph), ` ${one.margin} `, element('small', {}, one.words));
    return this.table(['Requirement', 'Before', 'After'], rows.map(one => element('tr', one.turns ? {class: 'turns'} : {}, element('th', {scope: 'row'}, one.claim), cell(one.before), cell(one.after))), more);
  }

  slight(rows) {
    if (!rows.length) return [];
    return [element('details', {class: 'slight'}, element('summary', {}, rows.length === 1 ? '1 figure changes by less than 0.5 %' : `${rows.length} figures change by less than 0.5 %`), this.figures(rows, ''))];
  }

  figures(rows, none, more = 0) {
    if (!rows.length) return element('p', {}, none);
    return this.table(['Figure', 'Before', 'After'], rows.map(one => element('tr', {}, element('th', {scope: 'row'}, one.name, element('small', {}, ` ${one.sheet}`)), element('td', {}, one.before), element('td', {}, one.after))), more);
  }

  table(heads, rows, more) {
    const table = element('table', {}, element('thead', {}, element('tr', {}, ...heads.map(head => element('th', {scope: 'col'}, head)))), element('tbody', {}, ...rows));
    return element('div', {class: 'wide'}, table, ...(more ? [element('p', {class: 'cap'}, `${more} more differ less.`)] : []));
  }
}
