// Judging the chain's line: whether it goes round, whether it is even, wrap, slack, and the travel of the tensioner.
import { digits, found, judge, quantity } from '../checks/index.js';
import {
  centresSource,
  chainLengthSource,
  chainSlackSource,
  chainWearSource,
  evenLinksSource,
  LEAST_WRAP,
  USUAL_CENTRES,
  weakestSource,
  wrapSource,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Worked } from './answer.js';
import type { Line } from './line.js';
import { mm, type Words } from './words.js';

/** Finer than a person sets a motor, mm: a chain short by less goes on. */
const GOES_ON = 0.05;

const linksRemedy = (links: number) => ({
  says: `Take ${links} links`,
  change: [{ op: 'add' as const, path: '/links', value: links }],
});

function checkNoLine({ noLine }: Worked): readonly Finding[] {
  return noLine === undefined
    ? []
    : [
        found({
          code: 'chain-goes-round',
          level: 'stop',
          field: noLine.field,
          title: 'The chain does not go round',
          says: `${noLine.says} Move the shafts apart, or take more links.`,
          source: chainLengthSource,
        }),
      ];
}

function checkApart(line: Line, w: Words): Finding {
  const { mounted, least, pitch } = line;
  const pitches = mounted / pitch;
  const touches = mounted <= least;
  const usual = pitches >= USUAL_CENTRES.least && pitches <= USUAL_CENTRES.most;
  return found({
    code: 'centre-distance',
    level: judge(['stop', touches], ['note', !usual]),
    field: 'centres',
    title: touches
      ? `The sprockets touch: centres ${w.length(mounted)}, ${w.length(least)} wanted at least`
      : `Centres ${digits(pitches, 1)} pitches, usually ${USUAL_CENTRES.least} to ${USUAL_CENTRES.most}`,
    says: touches
      ? 'Move the shafts apart, or take smaller sprockets.'
      : usual
        ? 'Long enough to share the wear among the links, short enough not to whip.'
        : pitches < USUAL_CENTRES.least
          ? 'It runs, but each link goes round more often and wears sooner, and the wrap is less. Keep it oiled and look at it more often.'
          : 'It runs, but the loose strand whips and hangs deep; an idler or a guide under it helps.',
    value: quantity(mounted, 'mm'),
    limit: quantity(
      touches
        ? least
        : (usual || pitches < USUAL_CENTRES.least ? USUAL_CENTRES.least : USUAL_CENTRES.most) * pitch,
      'mm',
    ),
    formula: `${mm(mounted)} mm ÷ ${mm(pitch, 3)} mm = ${digits(pitches, 1)} pitches; half of both outside diameters ${mm(least)} mm`,
    source: centresSource,
  });
}

function checkEven({ links, choices }: Line, w: Words): Finding {
  const odd = links % 2 === 1;
  const even = odd ? [links - 1, links + 1] : [];
  return found({
    code: 'even-links',
    level: odd ? 'caution' : 'pass',
    field: 'links',
    title: odd ? `${links} links need an offset link` : `${links} links, an even count`,
    says: odd
      ? `An odd chain closes only with a cranked (offset) link, its weakest place. Take an even count and move the centres${
          choices.length === 0
            ? ''
            : `: ${choices
                .filter((one) => one.links % 2 === 0)
                .map((one) => `${one.links} links at ${w.length(one.centres)}`)
                .join(', ')}`
        }.`
      : 'It closes with a plain joining link; a spring clip points its closed end in the direction of travel.',
    value: quantity(links, 'links'),
    formula: odd ? `${links} = 2 × ${(links - 1) / 2} + 1` : `${links} = 2 × ${links / 2}`,
    source: evenLinksSource,
    ...(odd ? { remedies: even.map(linksRemedy) } : {}),
  });
}

function checkWrap({ p }: Worked, { wrapSmall, mounted, pitch }: Line): Finding {
  const ok = wrapSmall >= LEAST_WRAP;
  const small = Math.min(p.motorTeeth, p.wheelTeeth);
  return found({
    code: 'wrap',
    level: ok ? 'pass' : 'caution',
    field: 'centres',
    title: `The small sprocket is wrapped ${digits(wrapSmall, 1)}°, ${LEAST_WRAP}° wanted`,
    says: ok
      ? `${digits((small * wrapSmall) / 360, 1)} of its teeth share the pull.`
      : `Only ${digits((small * wrapSmall) / 360, 1)} of its teeth share the pull. Move the shafts apart, take a lower ratio, or lead the loose strand round it with an idler outside.`,
    value: quantity(wrapSmall, 'degrees'),
    limit: quantity(LEAST_WRAP, 'degrees'),
    formula: `180° − 2 arcsin((R − r) ÷ ${digits(mounted / pitch, 3)}), R = 1 ÷ (2 sin(180° ÷ ${Math.max(p.motorTeeth, p.wheelTeeth)})), r likewise with ${small}: ${digits(wrapSmall)}°`,
    source: wrapSource,
  });
}

/** How the chain hangs where the shafts stand now. */
function checkSlack({ p, choice }: Worked, line: Line, w: Words): readonly Finding[] {
  const { slack, wanted, links, centres, mounted, span } = line;
  if (slack === undefined) return [];
  if (slack.excess < -GOES_ON) {
    const worn = (choice?.wear?.elongation ?? 0) > 0;
    return [
      found({
        code: 'chain-slack',
        level: 'stop',
        field: 'links',
        title: `${links} links are ${w.length(-slack.excess)} too short for centres of ${w.length(mounted)}`,
        says: `New, that chain is straight at ${w.length(centres)}${worn ? '; worn as it is, a little farther' : ''}. Move the shafts together, or take ${links + (links % 2 === 0 ? 2 : 1)} links.`,
        value: quantity(mounted, 'mm'),
        limit: quantity(centres, 'mm'),
        formula: `chain less straight line = ${mm(slack.excess)} mm`,
        source: chainLengthSource,
        remedies: [linksRemedy(links + (links % 2 === 0 ? 2 : 1))],
      }),
    ];
  }
  const idler = p.tensioner === 'idler';
  const { movement } = slack;
  const level = judge(
    ['caution', movement < wanted.least && !idler],
    ['caution', movement > wanted.most && !idler],
    ['note', movement > wanted.reversing && !idler],
  );
  const range = `${w.roughBare(wanted.least)} to ${w.rough(wanted.reversing)}`;
  const says = idler
    ? `The idler pushes the middle of the loose strand ${w.rough(movement / 2)} aside to take it up.`
    : movement < wanted.least
      ? `Too tight: a chain has no even pitch, and the tight place bends the shafts and eats the bearings. Let the loose strand move ${range}, turning the drive to its tightest place.`
      : movement > wanted.most
        ? `Too loose: it slaps, and climbs the teeth when the motor takes hold. Let the loose strand move ${range}${p.tensioner === 'none' ? '; with nothing to take it up, other centres or an idler are wanted' : ''}.`
        : movement > wanted.reversing
          ? `Within what a drive that always pulls one way may have (${w.rough(wanted.most)}). One that brakes or reverses jerks through it: ${range} there.`
          : 'Within what a drive that brakes or reverses should have.';
  return [
    found({
      code: 'chain-slack',
      level,
      field: p.tensioner === 'none' ? 'links' : 'centres',
      title: `The loose strand moves ${w.rough(movement)}, ${range} wanted`,
      says,
      value: quantity(movement, 'mm'),
      limit: quantity(movement < wanted.least ? wanted.least : wanted.reversing, 'mm'),
      formula: `chain ${mm(slack.excess, 3)} mm longer than its straight line: √(2 × ${mm(span)} × ${mm(slack.excess, 3)} + ${mm(slack.excess, 3)}²) = ${mm(movement)} mm; 2 to 3 % of the span, 6 % at most`,
      source: chainSlackSource,
    }),
  ];
}

function checkTakeUp({ p, choice }: Worked, line: Line, w: Words): readonly Finding[] {
  if (choice === undefined) return [];
  const { takeUp, links } = line;
  const limit = w.share(choice.limit.replace);
  const source = weakestSource(chainWearSource, chainLengthSource);
  const need =
    p.tensioner === 'idler'
      ? takeUp.idlerForWear
      : Math.min(takeUp.centresForWear, takeUp.centresForTwoLinks);
  const formula =
    p.tensioner === 'idler'
      ? `${links} × ${mm(line.pitch, 3)} × ${limit} = ${mm(links * line.pitch * choice.limit.replace)} mm of chain; pushed aside ${mm(takeUp.idlerForWear)} mm at mid-span`
      : `centres ${mm(takeUp.centresForWear)} mm out to ${limit}; two links come out at ${mm(takeUp.centresForTwoLinks)} mm`;
  if (p.tensioner === 'none') {
    return [
      found({
        code: 'take-up',
        level: 'caution',
        field: 'tensioner',
        title: 'Nothing takes the slack up',
        says: `By ${limit} of wear the chain is ${w.rough(links * line.pitch * choice.limit.replace)} longer and hangs loose. Slots at the motor of ${w.rough(takeUp.centresForWear)} or an idler on the loose strand take it up.`,
        formula,
        source,
        remedies: [
          { says: 'Let the motor move', change: [{ op: 'add', path: '/tensioner', value: 'slots' }] },
          { says: 'Add an idler', change: [{ op: 'add', path: '/tensioner', value: 'idler' }] },
        ],
      }),
    ];
  }
  const what = p.tensioner === 'idler' ? 'Idler' : 'Motor or axle';
  if (p.takeUp === undefined) {
    return [
      found({
        code: 'take-up',
        level: 'note',
        field: 'takeUp',
        title: `${what} needs ${w.rough(need)} of travel`,
        says: `From where the new chain runs, outward, until it is worn by ${limit}${p.tensioner === 'slots' && takeUp.centresForTwoLinks < takeUp.centresForWear ? ' and two links have come out' : ''}; a little inward too, to put the chain on.`,
        value: quantity(need, 'mm'),
        formula,
        source,
      }),
    ];
  }
  const enough = p.takeUp.mm >= need;
  return [
    found({
      code: 'take-up',
      level: enough ? 'pass' : 'caution',
      field: 'takeUp',
      title: `${what} moves ${w.rough(p.takeUp.mm)}, ${w.rough(need)} wanted`,
      says: enough
        ? `It takes the wear up to ${limit}.`
        : `The travel ends before the chain is worn by ${limit}; longer slots, or an idler beside it.`,
      value: quantity(p.takeUp.mm, 'mm'),
      limit: quantity(need, 'mm'),
      formula,
      source,
    }),
  ];
}

export function checkLine(worked: Worked, words: Words): readonly Finding[] {
  const { line, choice } = worked;
  if (line !== undefined) {
    return [
      checkApart(line, words),
      checkEven(line, words),
      checkWrap(worked, line),
      ...checkSlack(worked, line, words),
      ...checkTakeUp(worked, line, words),
    ];
  }
  if (worked.noLine !== undefined || choice === undefined) return checkNoLine(worked);
  return [
    found({
      code: 'not-checked',
      level: 'note',
      field: 'centres',
      title: 'the chain’s line',
      says: 'Give the centre distance or the links.',
      source: chainLengthSource,
    }),
  ];
}
