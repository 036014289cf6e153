// What can be set on a slot-and-tab joint: which plate is drawn, tabs, fit, corners, both plates.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { useField } from '../shared/pull-fields.js';

function tabFields(f: FieldKit) {
  const group = 'Tabs';
  return {
    draws: f.choice({
      title: 'Plate drawn',
      help: 'tabbed: the plate that stands on the other; slotted: the plate that takes the tabs. One set of numbers gives both.',
      group,
      choices: [
        { value: 'tabbed', label: 'The one with tabs' },
        { value: 'slotted', label: 'The one with slots' },
      ],
      default: 'slotted',
    }),
    length: f.length.given({
      title: 'Joint length',
      help: 'Edge of the tabbed plate that stands on the slotted one.',
      measuring: 'Along the edge, end to end.',
      group,
      min: 15,
      max: 3000,
      default: '200 mm',
    }),
    tabs: f.count.given({
      title: 'Tabs',
      help: 'How many tabs share the edge; two find the place, more hold it straight.',
      group,
      min: 1,
      max: 24,
      default: 3,
    }),
    tabWidth: f.length.given({
      title: 'Tab width',
      help: 'Along the edge; at least one and a half thicknesses.',
      measuring: 'Caliper over a tab of the plate that is there already.',
      group,
      min: 4,
      max: 500,
      default: '30 mm',
    }),
    first: f.length.maybe({
      title: 'First tab from the end',
      help: 'From the end of the edge to the middle of the first tab; the last stands as far from the other end. Left out: evenly shared.',
      measuring: 'Caliper from the end to the tab’s near side, plus half the tab.',
      group,
      min: 3,
      max: 1500,
      usual: [30, 38],
    }),
    other: f.length.given({
      title: 'Thickness of the other plate',
      help: 'The plate that is not drawn; the measured one, since plate is rarely its nominal thickness.',
      measuring: 'Micrometer or caliper on a clean edge, scale off.',
      group,
      min: 1,
      max: 40,
      suggestions: ['3', '4', '5', '6', '8', '10', '12', '1/8 in', '3/16 in', '1/4 in', '3/8 in'],
      default: '6 mm',
    }),
    proud: f.length.given({
      title: 'Tab stands proud',
      help: 'How far a tab comes out of the slotted plate; 0 is flush, negative lies under the face and leaves room for a plug weld.',
      group,
      min: -20,
      max: 20,
      default: '0 mm',
    }),
    chamfer: f.length.given({
      title: 'Chamfer on the tabs',
      help: 'Leading corners of each tab, so that it finds its slot; 0 leaves them sharp.',
      group,
      min: 0,
      max: 20,
      default: '1 mm',
      appliesWhen: { field: 'draws', values: ['tabbed'] },
    }),
  };
}

function fitFields(f: FieldKit) {
  const group = 'Fit';
  return {
    clearance: f.length.given({
      title: 'Clearance',
      help: 'What a slot is larger than its tab at its narrowest, both sides together; 0.3 to 0.5 mm on a measured kerf.',
      measuring:
        'Cut a ladder of slots in steps of 0.1 mm in the same plate, take the one that goes in by hand.',
      group,
      min: 0,
      max: 3,
      default: '0.4 mm',
    }),
    lean: f.angle.given({
      title: 'Lean of the cut',
      help: 'How far the cut leans from square; 1 to 5 for air plasma. A slot narrows by it from face to face.',
      measuring: 'Square on the face, feeler at the far edge: gap ÷ thickness is its tangent.',
      group,
      min: 0,
      max: 8,
      default: '2',
    }),
    relief: f.length.given({
      title: 'Corner relief',
      help: 'Radius of the bite at slot corners and tab roots, so that square corners seat; 0 leaves the torch’s own radius.',
      group,
      min: 0,
      max: 10,
      default: '1.5 mm',
    }),
    eye: f.length.maybe({
      title: 'Eye to pierce in',
      help: 'Diameter of a round eye in the middle of each slot, where the slot is too narrow to pierce in; five kerfs is usual. The weld fills it.',
      group,
      min: 3,
      max: 40,
      usual: [9, 11],
      appliesWhen: { field: 'draws', values: ['slotted'] },
    }),
    use: useField(f),
  };
}

function plateSizes(f: FieldKit) {
  const tabbed = { field: 'draws', values: ['tabbed'] } as const;
  const slotted = { field: 'draws', values: ['slotted'] } as const;
  return {
    height: f.length.given({
      title: 'Height',
      help: 'Of the tabbed plate over the joint, tabs not counted.',
      measuring: 'From the shoulder to the far edge.',
      group: 'Tabbed plate',
      min: 10,
      max: 3000,
      default: '80 mm',
      appliesWhen: tabbed,
    }),
    plateLength: f.length.given({
      title: 'Length',
      help: 'Of the slotted plate, along the joint; the joint stands in the middle of it.',
      group: 'Slotted plate',
      min: 20,
      max: 3000,
      default: '240 mm',
      appliesWhen: slotted,
    }),
    plateWidth: f.length.given({
      title: 'Width',
      help: 'Of the slotted plate, across the joint.',
      group: 'Slotted plate',
      min: 15,
      max: 3000,
      default: '100 mm',
      appliesWhen: slotted,
    }),
    jointAt: f.length.given({
      title: 'Joint from the lower edge',
      help: 'From the lower edge of the slotted plate to the middle of the slots.',
      measuring: 'Caliper from the edge to the slot’s near side, plus half the slot.',
      group: 'Slotted plate',
      min: 4,
      max: 2990,
      default: '40 mm',
      appliesWhen: slotted,
    }),
    corner: f.length.given({
      title: 'Corner radius',
      help: 'Outside corners that are not in the joint; 0 leaves them sharp.',
      group: 'Fit',
      min: 0,
      max: 500,
      default: '5 mm',
    }),
  };
}

/** One schema for both plates. Lengths in mm or as typed; x along the joint, its middle at 0. */
export function slotTabJointParameters(f: FieldKit) {
  return z.strictObject({ ...tabFields(f), ...plateSizes(f), ...fitFields(f), ...plateFields(f) });
}

export type SlotTabJoint = z.output<ReturnType<typeof slotTabJointParameters>>;
