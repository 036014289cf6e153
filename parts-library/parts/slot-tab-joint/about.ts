// What is said of the slot-and-tab joint in a list of families.
import type { About } from '../about.js';

export const slotTabJointAbout: About = {
  id: 'slot-tab-joint',
  title: 'Slot-and-tab joint',
  summary:
    'Two plates that find each other before the weld: the one with tabs or the one with slots, clearance and taper counted, corners relieved.',
};
