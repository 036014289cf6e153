// Checks of a tab: hole and edge, pin, metal beside the hole, weld, cope, pair.
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
import { checkAlong, checkCope, checkLeanOver, checkPair, checkWeldMetal } from '../shared/ear-checks.js';
import { pullDirection } from '../shared/pull-fields.js';
import type { Tab } from './parameters.js';
import { filletOf, gapOf, resolveTab, thinnerOf } from './resolve.js';

export function checkTab(part: Part, p: Tab, facts: Facts): readonly Finding[] {
  const answer = resolveTab(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const { outline, size } = answer.value;
  const pattern = patternOf(size, [{ featureId: 'hole', at: outline.centre }]);
  const ears = p.ears === 'pair' ? 2 : 1;
  const ear: Ear = {
    outline: outlineOf(part).contour,
    featureId: 'hole',
    at: outline.centre,
    pin: size.thread.diameter,
    hole: Math.max(size.diameter, size.made === 'tapped' ? size.thread.diameter : 0),
    thickness: p.thickness.mm,
    material: material.row,
    ears,
    fields: { pin: 'bolt', beside: 'nose', thickness: 'thickness' },
  };
  const direction = pullDirection(p.pullAngle.value);
  const load = p.pull === undefined ? undefined : { newtons: p.pull.value, direction };
  const weld: EdgeWeld = {
    leg: filletOf(p, facts.format.unit),
    sides: p.weldSides,
    length: outline.edge.length,
    thickness: p.thickness.mm,
    thinner: thinnerOf(p),
    material: material.row,
    anchor: { x: 0, y: 0 },
    fields: { leg: 'weldLeg', length: 'base', sides: 'weldSides' },
  };
  const each = load === undefined ? 0 : load.newtons / ears;
  return mergeNotChecked([
    ...checkUse(p.use),
    ...(load === undefined ? [notCheckedLoad('pull', 'pin, metal beside the hole and weld under load')] : []),
    ...checkEar(ear, load, facts),
    ...(size.made === 'tapped' ? [] : checkPin(ear, load, size.thread, p.boltGrade)),
    ...checkEdgeDistance(part, pattern, facts, 'nose'),
    ...checkWeldMetal(material.row, 'material'),
    ...checkEdgeFillet(weld, facts),
    ...checkEdgeWeld(
      weld,
      load === undefined
        ? undefined
        : {
            away: each * direction.y,
            along: each * direction.x,
            // About the edge's middle: a pull to the right on a high hole, and a pull off the middle.
            moment: each * (direction.x * outline.centre.y - direction.y * outline.centre.x),
          },
      facts,
    ),
    ...checkCope(
      outline.edge,
      p.edge === 'coped' ? p.tube.mm : undefined,
      { width: 'base', tube: 'tube' },
      facts,
    ),
    ...(p.edge === 'along'
      ? checkAlong(
          p.tube.mm,
          gapOf(p) === undefined ? -p.thickness.mm / 2 : (gapOf(p) ?? 0) / 2,
          p.thickness.mm,
          { tube: 'tube', edge: 'edge' },
          facts,
        )
      : []),
    ...checkPair(gapOf(p), p.eye.mm, p.play.mm, facts),
    ...checkLeanOver(p.height.mm, p.thickness.mm, 'height', facts),
    ...checkOldTube('tube'),
    ...checkTapping(pattern, p.thickness.mm, facts),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, () => ({
      field: 'holes',
      remedies: [
        { says: 'Mark the hole and drill it', change: [{ op: 'add', path: '/holes', value: 'drill' }] },
      ],
    })),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkMaterialCaution(material.row),
  ]);
}
