// The cut of one part settled: class, chart row, what was given instead, and the facts that checks and plans share.
import type { Facts, Known } from '../checks/index.js';
import type { CutSettings } from '../cutting/index.js';
import { cutTolerance, findMaterial, type Source } from '../handbook/index.js';
import type { Finding, Format, Level, Part } from '../model/index.js';
import type { FieldProblem } from '../parts/index.js';
import {
  chartMaterial,
  chartRow,
  drillDrift,
  holeKerf,
  suggestClass,
  type ChartRow,
} from '../process/index.js';
import { writeSpeed } from '../units/index.js';
import type { GivenProcess } from './process-choice.js';
import { plateFor, type ShopFacts } from './shop.js';

export interface SettledProcess {
  readonly processClass: string;
  readonly row: ChartRow;
  readonly settings: CutSettings;
  readonly facts: Facts;
  readonly findings: readonly Finding[];
}

export type Settled =
  | { readonly ok: true; readonly value: SettledProcess }
  | { readonly ok: false; readonly problem: FieldProblem };

/** A figure that came with the request rather than from a table. */
const given = (title: string): Source => ({
  title: `${title} as given`,
  where: 'given for this part; a coupon measures it',
  certainty: 'common practice',
});

/** Small holes are cut 5 to 10 % wider than straight lines, so a kerf given for both is known that much worse there. */
const HOLE_KERF_DOUBT = 0.1;

/** A figure further from its usual value than this many times is more likely a slip of the keyboard than a measure. */
const LIKELY_SLIP = 2;

const slipRule: Source = {
  title: 'Given figures against the chart',
  where: `half to ${LIKELY_SLIP} times the chart's, and a hole kerf as near to the kerf; beyond it look for a slip`,
  certainty: 'common practice',
};

const isUnlike = (given: number | undefined, usual: number): given is number =>
  given !== undefined && (given > usual * LIKELY_SLIP || given < usual / LIKELY_SLIP);

const classRule: Source = {
  title: 'Class by plate thickness',
  where: 'the thickness window of each class in the cut chart',
  certainty: 'common practice',
};

/**
 * Settles how a part is cut.
 * @param part material and thickness (mm) decide the chart row
 * @param choice what was given; everything else comes from the shop's chart
 * @returns settings, facts and what to know about them, or the field that stands in the way
 */
export function settleProcess(part: Part, choice: GivenProcess, shop: ShopFacts, format: Format): Settled {
  const material = findMaterial(part.material);
  if (!material.found) return { ok: false, problem: { field: 'material', says: material.says } };
  const suggested =
    suggestClass(part.thickness, shop.chart)?.processClass.id ?? nearestClass(part.thickness, shop);
  const processClass = choice.processClass ?? suggested;
  const answer = chartRow(shop.chart, {
    processClass,
    material: chartMaterial(material.row),
    thickness: part.thickness,
  });
  if (!answer.found) {
    const field = answer.field === 'processClass' ? 'process.processClass' : answer.field;
    return { ok: false, problem: { field, says: answer.says } };
  }
  const { row } = answer;
  const kerf = known(choice.kerf, 'Kerf', row.kerf, choice.kerfPlusMinus ?? row.kerfPlusMinus, row);
  const inHoles = holeKerfOf(choice, kerf);
  const plate = plateFor(shop, part);
  return {
    ok: true,
    value: {
      processClass,
      row,
      settings: {
        kerf: kerf.amount,
        kerfPlusMinus: kerf.plusMinus,
        holeKerf: inHoles.amount,
        speed: choice.speed ?? row.startSpeed,
        pierceSeconds: choice.pierceSeconds ?? row.pierceSeconds ?? 0,
        thickness: part.thickness,
        squareSide: shop.machine.squareSide,
      },
      facts: {
        format,
        processClass,
        kerf,
        holeKerf: inHoles,
        cutTolerance: (nominal) => toleranceOf(part.thickness, nominal),
        drillDrift: {
          amount: (drillDrift.low + drillDrift.high) / 2,
          plusMinus: (drillDrift.high - drillDrift.low) / 2,
          source: drillDrift.source,
        },
        tools: shop.tools,
        plateSize: plate,
      },
      findings: processFindings(part, choice, row, answer.clamped ? answer.notes : [], format),
    },
  };
}

function known(
  typed: number | undefined,
  title: string,
  chart: number,
  plusMinus: number,
  row: ChartRow,
): Known {
  return typed === undefined
    ? { amount: chart, plusMinus, source: row.exceptions?.kerf ?? row.source }
    : { amount: typed, plusMinus, source: given(title) };
}

/** Given for holes; else as given for all; else wider than the chart's kerf by the usual factor. */
function holeKerfOf(choice: GivenProcess, kerf: Known): Known {
  if (choice.holeKerf !== undefined) {
    return { amount: choice.holeKerf, plusMinus: kerf.plusMinus, source: given('Hole kerf') };
  }
  if (choice.kerf !== undefined) {
    return {
      amount: choice.kerf,
      plusMinus: kerf.plusMinus + HOLE_KERF_DOUBT * choice.kerf,
      source: {
        title: 'Kerf as given, taken for small holes too',
        where: 'in small holes it is usually 5 to 10 % wider; a hole ladder measures it',
        certainty: 'common practice',
      },
    };
  }
  const wider = holeKerf(kerf.amount, kerf.plusMinus);
  return { amount: wider.kerf, plusMinus: wider.plusMinus, source: wider.source };
}

/** No class holds this plate: the strongest for a thick one, the weakest for a thin one. */
function nearestClass(thickness: number, shop: ShopFacts): string {
  const byAmps = shop.chart.classes.toSorted((a, b) => a.amps - b.amps);
  const weakest = byAmps[0];
  const nearest = weakest !== undefined && thickness < weakest.thinnest ? weakest : byAmps.at(-1);
  return nearest?.id ?? '';
}

/** Nominal sizes that stand for the columns of the standard, mm, used where its own cell is blank. */
const COLUMNS = [1, 3, 10, 35, 125, 315, 1000, 2000, 3999] as const;
/** The table ends at this thickness, mm. */
const THICKEST = 100;

/** ISO 9013 class 2 at a nominal size; a blank cell takes the next larger size's deviation, which is never smaller. */
function toleranceOf(thickness: number, nominal: number): Known {
  for (const size of [nominal, ...COLUMNS.filter((column) => column >= nominal), 3999]) {
    const answer = cutTolerance(Math.min(thickness, THICKEST), size, 2);
    if (answer.found) return { amount: answer.row.value, plusMinus: 0, source: answer.row.source };
  }
  throw new Error(`ISO 9013 class 2 has no deviation for plate of ${thickness} mm.`);
}

const finding = (
  code: string,
  level: Level,
  field: string,
  title: string,
  says: string,
  source: Source,
): Finding => ({ code, level, stage: 'plan', subject: {}, field, title, says, source });

function processFindings(
  part: Part,
  choice: GivenProcess,
  row: ChartRow,
  clampedNotes: readonly string[],
  format: Format,
): readonly Finding[] {
  const findings: Finding[] = [];
  const fromChart = (
    [
      ['kerf', choice.kerf],
      ['cutting speed', choice.speed],
      ['pierce delay', choice.pierceSeconds],
    ] as const
  ).flatMap(([name, value]) => (value === undefined ? [name] : []));
  const speedSource = row.exceptions?.startSpeed ?? row.source;
  if (row.edgeStart && choice.pierceSeconds === undefined) {
    findings.push(
      finding(
        'cannot-pierce',
        'stop',
        'thickness',
        `${row.processClass} does not pierce ${format.length(part.thickness)}`,
        `This plate would have to be started from an edge, which a cut file with pierces cannot do. Choose a stronger class, or give a pierce delay that your torch is known to manage.`,
        classRule,
      ),
    );
  }
  if (clampedNotes.length > 0) {
    findings.push(
      finding(
        'outside-chart',
        choice.speed === undefined ? 'stop' : 'caution',
        'thickness',
        `${format.length(part.thickness)} lies outside the chart of ${row.processClass}`,
        `${clampedNotes.join(' ')} Choose a class that covers it, or give kerf, speed and pierce delay from your own chart.`,
        classRule,
      ),
    );
  }
  const kerf = choice.kerf ?? row.kerf;
  if (isUnlike(choice.kerf, row.kerf)) {
    findings.push(
      finding(
        'unlike-chart',
        'caution',
        'process.kerf',
        `Kerf ${format.length(choice.kerf)} given, ${format.length(row.kerf)} in the chart`,
        `Every edge moves by half of it. Measure it on a slug, and look for a slip of the decimal point.`,
        slipRule,
      ),
    );
  }
  if (isUnlike(choice.holeKerf, kerf)) {
    findings.push(
      finding(
        'unlike-chart',
        'caution',
        'process.holeKerf',
        `Hole kerf ${format.length(choice.holeKerf)} beside a kerf of ${format.length(kerf)}`,
        `In small holes it is usually 5 to 10 % wider. Measure it on a hole ladder, and look for a slip of the decimal point.`,
        slipRule,
      ),
    );
  }
  if (isUnlike(choice.speed, row.startSpeed)) {
    findings.push(
      finding(
        'unlike-chart',
        'caution',
        'process.speed',
        `Cutting speed ${writeSpeed(choice.speed, { unit: format.unit })} given, ${writeSpeed(row.startSpeed, { unit: format.unit })} in the chart`,
        `Look for a slip of the unit or of the decimal point.`,
        slipRule,
      ),
    );
  }
  if (fromChart.length > 0 && row.confidence !== 'measured') {
    findings.push(
      finding(
        'starting-values',
        'note',
        'process',
        `Starting values: ${fromChart.join(', ')}`,
        `Taken for ${row.processClass} from a general chart (${row.confidence} confidence). The chart of your power source and nozzle, or a coupon, wins.`,
        speedSource,
      ),
    );
  }
  return findings;
}
