// A slot-and-tab joint worked out once: shared sizes, and the features of the plate that is drawn.
import type { Feature } from '../../model/index.js';
import { rememberResolved, type Resolved } from '../shared/resolved.js';
import { jointOf, type Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';
import { slottedPlate } from './slotted.js';
import { tabbedPlate } from './tabbed.js';

interface ResolvedJoint {
  readonly joint: Joint;
  readonly features: readonly Feature[];
}

function resolveFresh(p: SlotTabJoint): Resolved<ResolvedJoint> {
  const joint = jointOf(p);
  if (!joint.ok) return joint;
  if (p.draws === 'tabbed') {
    const outline = tabbedPlate(p, joint.value);
    return outline.ok ? { ok: true, value: { joint: joint.value, features: [outline.value] } } : outline;
  }
  const features = slottedPlate(p, joint.value);
  return features.ok ? { ok: true, value: { joint: joint.value, features: features.value } } : features;
}

/** Works a joint out; the same parameters object once. */
export const resolveJoint = rememberResolved(resolveFresh, 'relief');
