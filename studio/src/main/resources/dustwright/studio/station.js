// The station in section: where the dust is, what turns, what the probes see.
import {shape} from './plate.js';

const text = (x, y, words, kind = '', anchor = 'start') => shape('text', {x, y, class: kind, 'text-anchor': anchor}, words);

function probe(letters, x, y, on, words) {
  return shape('g', {}, shape('circle', {cx: x, cy: y, r: 13, class: on ? 'bubble true' : 'bubble'}), text(x, y + 4, letters, on ? 'letters true' : 'letters', 'middle'), text(x + 19, y + 4, words));
}

// How high dust stands in the cone for a share of the volume up to its probe.
const coneDepth = share => 92 * Math.cbrt(Math.min(1.3, Math.max(0, share)));

export function station(panel, now) {
  const out = now.outputs;
  const pumps = Object.entries(out).filter(([name]) => name.startsWith('pump'));
  const depth = coneDepth(now.receiver);
  const wide = 8 + 52 * depth / 100;
  const bag = 92 * Math.min(1.1, now.containerShare);
  const caked = name => now.broken.includes(name);
  const receiverSees = now.receiver >= 1 && !caked('receiver probe blind') || caked('receiver probe caked');
  const containerSees = now.containerShare >= 1 - 1e-9 && !caked('container probe blind') || caked('container probe caked');
  const parts = [
    shape('path', {d: 'M40 96V60Q100 26 160 60V150L108 250H92L40 150Z', class: 'vessel'}),
    shape('path', {d: `M${100 - wide} ${250 - depth}H${100 + wide}L108 250H92Z`, class: 'dust'}),
    ...[58, 76, 94, 112, 130].map(x => shape('rect', {x, y: 66, width: 10, height: 56, class: out.pulses ? 'element pulsing' : 'element'})),
    text(168, 96, out.pulses ? 'filter being cleaned' : 'filter'),
    shape('path', {d: 'M-36 138H40', class: 'tube'}), text(-36, 130, now.users ? 'users at it' : 'no users'),
    shape('path', {d: 'M100 43V18H176', class: 'tube'}),
    shape('path', {d: 'M168 18m-9 -7v14l18 -14v14z', class: out.vent_shut ? 'valve' : 'valve true'}), text(184, 10, out.vent_shut ? 'vent shut' : 'vent open: no suction'),
    shape('path', {d: 'M186 18H214V32', class: 'tube'}),
    ...pumps.map(([name, on], n) => shape('g', {transform: `translate(${214 + n * 44} 48)`},
      shape('circle', {r: 16, class: on ? 'machine true' : 'machine'}), shape('circle', {cy: -6, r: 6, class: 'lobe'}), shape('circle', {cy: 6, r: 6, class: 'lobe'}), text(0, 32, on ? 'runs' : 'stands', '', 'middle'))),
    probe('LR', 186, 160, receiverSees, receiverSees ? 'covered' : 'free'),
  ];
  if (panel.motion) {
    const turns = out.valve && !caked('valve chain broken') && !caked('rotor jammed');
    parts.push(shape('g', {transform: 'translate(100 264)'}, shape('circle', {r: 14, class: 'machine'}),
      shape('g', {class: turns ? 'rotor turns' : 'rotor'}, shape('path', {d: 'M-14 0H14M0 -14V14M-10 -10L10 10M-10 10L10 -10', class: 'vanes'}))),
    text(122, 268, !out.valve ? 'rotary valve stands' : turns ? 'rotary valve turns' : 'its motor runs, the rotor stands'));
    parts.push(shape('path', {d: 'M94 278V292M106 278V292', class: 'vessel'}));
  } else {
    parts.push(shape('path', {d: 'M92 250V292M108 250V292', class: 'vessel'}));
  }
  const off = now.broken.includes('container comes off');
  parts.push(shape('path', {d: `M56 ${394 - bag}H144V386Q144 394 136 394H64Q56 394 56 386Z`, class: 'dust'}),
    shape('path', {d: 'M94 292Q56 298 56 312V386Q56 394 64 394H136Q144 394 144 386V312Q144 298 106 292', class: off ? 'vessel broken' : 'vessel'}),
    text(100, 352, `${panel.container}, ${Math.round(100 * now.containerShare)} %`, 'halo', 'middle'),
    probe('LB', 186, 312, containerSees, containerSees ? 'covered' : 'free'),
    ...(off ? [text(168, 372, 'not tight')] : []));
  return shape('svg', {viewBox: '-44 0 374 404', role: 'img', 'aria-label': `Station ${panel.station}: ${panel.container} ${Math.round(100 * now.containerShare)} % full, receiver ${Math.round(100 * now.receiver)} % of the way to its probe`}, ...parts);
}
