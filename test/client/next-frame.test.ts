// What waits for the next picture: taken over once, one value from another, and rendered after all of them.
import { computed, signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { followInNextFrame, renderInNextFrame } from '../../client/state/next-frame.js';

/** Pictures made by hand: gives what was asked for before each. */
function stubFrames(): () => void {
  const asked: FrameRequestCallback[] = [];
  vi.stubGlobal('requestAnimationFrame', (turn: FrameRequestCallback) => asked.push(turn));
  return () => {
    for (const turn of asked.splice(0)) turn(0);
  };
}

afterEach(() => vi.unstubAllGlobals());

describe('a value that follows with the next picture', () => {
  it('stays as it was until then, and takes the last of several', () => {
    const picture = stubFrames();
    const source = signal(1);
    const { value, stop } = followInNextFrame(source);
    source.value = 2;
    source.value = 3;
    expect(value.value).toBe(1);
    picture();
    expect(value.value).toBe(3);
    stop();
    source.value = 4;
    picture();
    expect(value.value).toBe(3);
  });

  it('is taken over in the same picture when it follows another that follows, and is rendered after both', () => {
    const picture = stubFrames();
    const source = signal('a');
    const first = followInNextFrame(source);
    const second = followInNextFrame(computed(() => `${source.value}${first.value.value}`));
    const rendered: string[] = [];
    renderInNextFrame(() => rendered.push(second.value.value));
    source.value = 'b';
    picture();
    expect(second.value.value).toBe('bb');
    expect(rendered).toEqual(['bb']);
    first.stop();
    second.stop();
  });

  it('does not wait where there are no pictures', () => {
    const source = signal(1);
    const { value, stop } = followInNextFrame(source);
    source.value = 2;
    expect(value.value).toBe(2);
    stop();
  });
});
