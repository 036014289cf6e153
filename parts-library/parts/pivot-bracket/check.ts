// Checks of a pivot bracket: pivot hole, ear, pin, foot, weld.
import {
  checkEar,
  checkEdgeDistance,
  checkEdgeFillet,
  checkEdgeWeld,
  checkLabel,
  checkMaterialCaution,
  checkOldTube,
  checkPin,
  checkSmallHoles,
  checkTapping,
  checkUse,
  checkWebs,
  mergeNotChecked,
  notCheckedLoad,
  type Ear,
  type EdgeWeld,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import { outlineOf, type Finding, type Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf } from '../shared/bolted.js';
import { checkAlong, checkCope, checkLeanOver, checkWeldMetal } from '../shared/ear-checks.js';
import { checkBend } from '../shared/foot-checks.js';
import { checkFootLoad } from './check-foot.js';
import { checkPivotHole } from './check-pivot.js';
import type { PivotBracket } from './parameters.js';
import { filletOf, gapOf, pullOn, resolveBracket, thinnerOf } from './resolve.js';

export function checkPivotBracket(part: Part, p: PivotBracket, facts: Facts): readonly Finding[] {
  const answer = resolveBracket(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const gap = gapOf(p);
  const ears = gap === undefined ? 1 : 2;
  const ear: Ear = {
    outline: outlineOf(part).contour,
    featureId: 'pivot',
    at: r.ear.centre,
    pin: r.pressing,
    hole: r.finished,
    thickness: p.thickness.mm,
    material: material.row,
    ears,
    fields: { pin: p.pivot === 'bolt' ? 'pin' : 'outside', beside: 'nose', thickness: 'thickness' },
  };
  const direction = pullOn(p);
  const load = p.pull === undefined ? undefined : { newtons: p.pull.value, direction };
  const each = load === undefined ? undefined : load.newtons / ears;
  const weld: EdgeWeld = {
    leg: filletOf(p, facts.format.unit),
    sides: p.weldSides,
    length: r.ear.edge.length,
    thickness: p.thickness.mm,
    thinner: thinnerOf(p),
    material: material.row,
    anchor: { x: 0, y: 0 },
    fields: { leg: 'weldLeg', length: 'base', sides: 'weldSides' },
  };
  const pattern = patternOf(r.size, r.holes);
  const isWelded = p.foot === 'weld';
  return mergeNotChecked([
    ...checkUse(p.use),
    ...(load === undefined ? [notCheckedLoad('pull', 'ears, pivot bolt and foot under load')] : []),
    ...checkPivotHole(p, r, facts),
    ...checkEar(ear, load, facts),
    ...checkPin({ ...ear, fields: { ...ear.fields, pin: 'pin' } }, load, r.pin, p.boltGrade),
    ...(p.pivot === 'bolt'
      ? checkEdgeDistance(
          part,
          {
            ...pattern,
            thread: r.pin,
            count: 1,
            holeDiameter: r.finished,
            holes: [{ featureId: 'pivot', at: r.ear.centre }],
          },
          facts,
          'nose',
        )
      : []),
    ...checkLeanOver(p.height.mm, p.thickness.mm, 'height', facts),
    ...(isWelded
      ? [
          ...checkWeldMetal(material.row, 'material'),
          ...checkEdgeFillet(weld, facts),
          ...checkEdgeWeld(
            weld,
            each === undefined
              ? undefined
              : {
                  away: each * direction.y,
                  along: each * direction.x,
                  moment: each * (direction.x * r.ear.centre.y - direction.y * r.ear.centre.x),
                },
            facts,
          ),
          ...checkCope(
            r.ear.edge,
            p.edge === 'coped' ? p.tube.mm : undefined,
            { width: 'base', tube: 'tube' },
            facts,
          ),
          ...(p.edge === 'along'
            ? checkAlong(
                p.tube.mm,
                gap === undefined ? -p.thickness.mm / 2 : gap / 2,
                p.thickness.mm,
                { tube: 'tube', edge: 'edge' },
                facts,
              )
            : []),
          ...checkOldTube('tube'),
        ]
      : [
          ...checkEdgeDistance(part, pattern, facts, 'inset'),
          ...checkBend(p, r, r.size.diameter, facts),
          ...checkFootLoad(p, r, material.row, each, facts),
          ...checkTapping(pattern, p.thickness.mm, facts),
        ]),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id === 'pivot'
        ? { field: p.pivot === 'bolt' ? 'pin' : 'outside' }
        : {
            field: 'holes',
            remedies: [
              {
                says: 'Mark the holes and drill them',
                change: [{ op: 'add', path: '/holes', value: 'drill' }],
              },
            ],
          },
    ),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkMaterialCaution(material.row),
  ]);
}
