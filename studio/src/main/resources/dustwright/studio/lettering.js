// Letters and labels of a drawing on a page: 12 px at any zoom, one after the other in the order given, each where it covers nothing; what finds no room waits for a closer look.
const SVG = 'http://www.w3.org/2000/svg';
const SIZE_px = 12;
const LINE_px = 14;
const SPACE_px = 4;
const CELL_px = 3;
const LONGEST = 24;
const DIRECTIONS = [[1, -1], [1, 1], [-1, -1], [-1, 1], [0, -1], [0, 1], [1, 0], [-1, 0]];
const REACH_px = [0, 7, 16, 28, 44];
// What does not hold or is thin is written even where that is far away.
const FAR_px = [...REACH_px, 70, 100, 140];
// The name of a closed inlet stands beside it or waits for a closer look: lines to all of them would hide the drawing.
const BESIDE_px = [0, 7, 16];
const INK = {letter: '#FFFFFF', chief: '#14211F', holds: '#14211F', quiet: '#43524F'};

const ruler = document.createElement('canvas').getContext('2d');

// Which cells of the seen part are taken.
class Taken {
  constructor([left, top, wide, high], pixel) {
    this.left = left;
    this.top = top;
    this.cell = CELL_px * pixel;
    this.across = Math.floor(wide / this.cell);
    this.down = Math.floor(high / this.cell);
    this.cells = new Uint8Array(this.across * this.down);
  }

  cellsOf([left, top, right, bottom]) {
    return [Math.floor((left - this.left) / this.cell), Math.floor((top - this.top) / this.cell), Math.floor((right - this.left) / this.cell), Math.floor((bottom - this.top) / this.cell)];
  }

  take(box) {
    const [left, top, right, bottom] = this.cellsOf(box);
    for (let y = Math.max(0, top); y <= Math.min(this.down - 1, bottom); y++) this.cells.fill(1, y * this.across + Math.max(0, left), y * this.across + Math.max(0, Math.min(this.across, right + 1)));
  }

  line([ax, ay], [bx, by], half) {
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / this.cell));
    if (steps > 20000) return;
    for (let n = 0; n <= steps; n++) {
      const [x, y] = [ax + (bx - ax) * n / steps, ay + (by - ay) * n / steps];
      this.take([x - half, y - half, x + half, y + half]);
    }
  }

  free(box) {
    const [left, top, right, bottom] = this.cellsOf(box);
    if (left < 0 || top < 0 || right >= this.across || bottom >= this.down) return false;
    for (let y = top; y <= bottom; y++) for (let x = left; x <= right; x++) if (this.cells[y * this.across + x]) return false;
    return true;
  }
}

// Draws the tags of a drawing for the part of it that is seen; those of the chosen piece come first, those of tubes that hold with room to spare only where one looks close. For a paper as large as it gets there, and nothing beyond its box.
export function letter(svg, chosen = '', close = false, paper = null) {
  const {width, height} = svg.getBoundingClientRect();
  if (!width || !height) return;
  const seen = svg.getAttribute('viewBox').split(' ').map(Number);
  const pixel = paper ? Math.max(seen[2] / paper.width, seen[3] / paper.height) : 1 / svg.getScreenCTM().a;
  const box = paper ? seen : whole(seen, width * pixel, height * pixel);
  const taken = new Taken(box, pixel);
  ruler.font = `bold ${SIZE_px}px ${getComputedStyle(svg).fontFamily}`;
  drawn(svg, taken, pixel);
  const tags = [...svg.querySelectorAll('[data-tag]')];
  const first = tag => tag.dataset.tag === 'letter' ? 0 : tag.dataset.name === chosen ? 1 : 2;
  for (const tag of tags.toSorted((a, b) => first(a) - first(b))) {
    const at = [Number(tag.dataset.x), Number(tag.dataset.y)];
    const inside = at[0] >= box[0] && at[1] >= box[1] && at[0] <= box[0] + box[2] && at[1] <= box[1] + box[3];
    const asked = close || tag.dataset.tag !== 'holds' || tag.dataset.name === chosen;
    lay(tag, inside && asked ? written(tag.dataset, at, taken, pixel, reach(tag.dataset, close || tag.dataset.name === chosen)) : []);
  }
}

function reach({tag, value}, close) {
  if (tag === 'quiet' && !close) return BESIDE_px;
  return tag === 'chief' && value ? FAR_px : REACH_px;
}

// Makes what is written in a tag, unless it stands there already.
function lay(tag, parts) {
  const laid = JSON.stringify(parts);
  if (tag.laid === laid) return;
  tag.laid = laid;
  tag.replaceChildren(...parts.map(([name, attributes, words]) => made(name, attributes, words)));
}

// What is seen of the sheet: the picture fills its place to the edges, whatever the shape of its box.
function whole([left, top, wide, high], width, height) {
  return [left - (width - wide) / 2, top - (height - high) / 2, width, height];
}

// What must not be written on: tubing, walls, symbols.
function drawn(svg, taken, pixel) {
  for (const path of svg.querySelectorAll('[data-layer=tubing] path:not(.catch), [data-layer=walls] path')) {
    const half = Number(path.getAttribute('stroke-width')) / 2 + pixel;
    for (const part of path.getAttribute('d').split('M').slice(1)) {
      const points = part.replace('Z', '').split('L').map(point => point.trim().split(/[ ,]+/).map(Number));
      for (let n = 1; n < points.length; n++) taken.line(points[n - 1], points[n], half);
    }
  }
  for (const circle of svg.querySelectorAll('[data-layer=symbols] circle:not(.catch)')) {
    const [x, y, r] = ['cx', 'cy', 'r'].map(name => Number(circle.getAttribute(name)));
    taken.take([x - r - pixel, y - r - pixel, x + r + pixel, y + r + pixel]);
  }
}

function written(tag, at, taken, pixel, reaches) {
  const clearance = Number(tag.clearance);
  if (tag.tag === 'letter') {
    const place = room(taken, at, clearance, 16 * pixel, 16 * pixel, pixel, reaches);
    return place ? [...leader(place, pixel), square(place.box), text(place.box[0] + 8 * pixel, place.box[1] + 12.5 * pixel, tag.name, pixel, {fill: INK.letter, 'font-weight': 'bold', 'text-anchor': 'middle'})] : [];
  }
  const cut = most => tag.name.length > most ? `${tag.name.slice(0, most / 2)}…${tag.name.slice(-(most / 2 - 1))}` : tag.name;
  const beside = tag.value ? `${tag.value} · ${tag.margin}` : '';
  const tries = tag.value ? [[cut(LONGEST), beside, ''], [cut(LONGEST), tag.margin, tag.value], [cut(10), tag.margin, tag.value], [cut(10), tag.margin, '']] : [[cut(LONGEST), '', ''], [cut(10), '', '']];
  for (const [name, next, below] of tries) {
    const nameWide = ruler.measureText(name).width;
    const wide = Math.max(nameWide + (next ? SPACE_px + ruler.measureText(next).width : 0), below ? ruler.measureText(below).width : 0);
    const place = room(taken, at, clearance, wide * pixel, (below ? 2 : 1) * LINE_px * pixel, pixel, reaches);
    if (!place) continue;
    const [left, top] = place.box;
    const base = top + 11 * pixel;
    const chief = tag.tag !== 'quiet';
    return [...leader(place, pixel), text(left, base, name, pixel, {fill: INK[tag.tag], ...(chief ? {'font-weight': 'bold'} : {})}),
      ...(next ? [text(left + (nameWide + SPACE_px) * pixel, base, next, pixel, {fill: INK.chief})] : []), ...(below ? [text(left, base + LINE_px * pixel, below, pixel, {fill: INK.chief})] : [])];
  }
  return [];
}

// The first free box round a place, nearest first, and the line that leads there when it stands apart.
function room(taken, [x, y], clearance, wide, high, pixel, reaches) {
  for (const reach of reaches) {
    for (const [dx, dy] of DIRECTIONS) {
      const away = (clearance + (2 + reach) * pixel) * (dx && dy ? 0.75 : 1);
      const foot = [x + dx * away, y + dy * away];
      const left = foot[0] + (dx - 1) / 2 * wide;
      const top = foot[1] + (dy - 1) / 2 * high;
      const box = [left, top, left + wide, top + high];
      if (!taken.free(box)) continue;
      taken.take(box);
      const lead = reach ? [[x + dx * clearance * 0.75, y + dy * clearance * 0.75], [foot[0] - dx * pixel, foot[1] - dy * pixel]] : null;
      if (lead) taken.line(...lead, pixel / 2);
      return {box, lead};
    }
  }
  return null;
}

function made(name, attributes, words) {
  const one = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) one.setAttribute(key, value);
  one.textContent = words;
  return one;
}

const text = (x, y, words, pixel, look) => ['text', {x, y, 'font-size': SIZE_px * pixel, class: 'tag', 'stroke-width': look.fill === INK.letter ? 0 : 3 * pixel, ...look}, words];
const square = ([left, top, right, bottom]) => ['rect', {x: left, y: top, width: right - left, height: bottom - top, fill: '#14211F'}, ''];
const leader = ({lead}, pixel) => lead ? [['path', {d: `M${lead[0].join(' ')}L${lead[1].join(' ')}`, fill: 'none', stroke: '#14211F', 'stroke-width': 0.8 * pixel}, '']] : [];
