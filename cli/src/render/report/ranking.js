"use strict";
// The order of the options under any wishes, worked out as the program does: the same weights, the same ways to weigh
// them, the same ties. Scores come as one row an option, one score a criterion, in the order that settles ties.
const ranking = (() => {
  const TIE = 1e-9;
  const DRAWS = 10000;
  const PARTS = 1000000;

  // Steele, Lea and Flood 2014: 64 bits of state, kept here as two halves of 32.
  class SplitMix {
    constructor() { this.high = 0x5eed0f0d; this.low = 0xd5ea7511; }
    step() {
      const low = this.low + 0x7f4a7c15;
      this.high = (this.high + 0x9e3779b9 + (low > 0xffffffff ? 1 : 0)) >>> 0;
      this.low = low >>> 0;
      let [high, rest] = [this.high, this.low];
      [high, rest] = mixed(high, rest, 30);
      [high, rest] = times(high, rest, 0xbf58476d, 0x1ce4e5b9);
      [high, rest] = mixed(high, rest, 27);
      [high, rest] = times(high, rest, 0x94d049bb, 0x133111eb);
      return mixed(high, rest, 31);
    }
    fraction() {
      const [high, low] = this.step();
      return (high * 2097152 + (low >>> 11)) / 9007199254740992;
    }
    below(count) {
      const [high, low] = this.step();
      return ((high % count) * (4294967296 % count) + (low % count)) % count;
    }
  }

  // A number with itself moved right by fewer than 32 bits, where they differ.
  function mixed(high, low, bits) {
    return [(high ^ (high >>> bits)) >>> 0, (low ^ ((low >>> bits) | (high << (32 - bits)))) >>> 0];
  }

  function times(high, low, otherHigh, otherLow) {
    const a = low & 0xffff, b = low >>> 16, c = otherLow & 0xffff, d = otherLow >>> 16;
    const middle = Math.floor((a * c) / 65536) + ((a * d) % 65536) + ((b * c) % 65536);
    const carried = b * d + Math.floor((a * d) / 65536) + Math.floor((b * c) / 65536) + Math.floor(middle / 65536);
    const upper = carried + Math.imul(high, otherLow) + Math.imul(low, otherHigh);
    return [upper >>> 0, Math.imul(low, otherLow) >>> 0];
  }

  // Weights drawn evenly from all that keep the order of the wishes.
  class Draws {
    constructor(wishes) {
      const any = wishes.some((wish) => wish > 0);
      const counted = wishes.map((_, place) => place).filter((place) => !any || wishes[place] > 0);
      counted.sort((one, other) => wishes[other] - wishes[one]);
      this.groups = [];
      for (const place of counted) {
        const last = this.groups[this.groups.length - 1];
        if (last !== undefined && wishes[last[0]] === wishes[place]) last.push(place);
        else this.groups.push([place]);
      }
      this.spacings = new Float64Array(counted.length);
      this.weights = new Float64Array(wishes.length);
      this.generator = new SplitMix();
    }
    draw() {
      const last = this.spacings.length - 1;
      if (last >= 0) {
        for (let place = 0; place < last; place += 1) this.spacings[place] = this.generator.fraction();
        this.spacings.subarray(0, last).sort();
        this.spacings[last] = 1;
        for (let place = last; place >= 1; place -= 1) this.spacings[place] -= this.spacings[place - 1];
      }
      this.spacings.sort();
      let largest = last;
      for (const group of this.groups) {
        for (let left = group.length - 1; left >= 1; left -= 1) {
          const other = this.generator.below(left + 1);
          [group[left], group[other]] = [group[other], group[left]];
        }
        for (const place of group) {
          this.weights[place] = this.spacings[largest];
          largest -= 1;
        }
      }
      return this.weights;
    }
  }

  function dot(row, weights) {
    let sum = 0;
    for (let place = 0; place < row.length; place += 1) sum += row[place] * weights[place];
    return sum;
  }

  function scored(rows, wishes) {
    const sum = wishes.reduce((sum, wish) => sum + wish, 0);
    const weights = wishes.map((wish) => (sum > 0 ? wish / sum : 1 / Math.max(1, wishes.length)));
    return rows.map((row) => dot(row, weights));
  }

  // Places by falling score; what ties with the best of a run keeps the order handed in.
  function bestFirst(scores) {
    const order = scores.map((_, place) => place);
    order.sort((one, other) => scores[other] - scores[one]);
    for (let from = 0; from < order.length;) {
      let to = from + 1;
      while (to < order.length && scores[order[from]] - scores[order[to]] <= TIE) to += 1;
      const run = order.slice(from, to).sort((one, other) => one - other);
      order.splice(from, run.length, ...run);
      from = to;
    }
    return order;
  }

  function shares(rows, wishes) {
    const places = rows.map(() => 0);
    const draws = new Draws(wishes);
    const scores = new Float64Array(rows.length);
    for (let drawn = 0; drawn < DRAWS; drawn += 1) {
      const weights = draws.draw();
      let best = -Infinity;
      for (let option = 0; option < rows.length; option += 1) {
        scores[option] = dot(rows[option], weights);
        if (scores[option] > best) best = scores[option];
      }
      let tied = 0;
      for (let option = 0; option < rows.length; option += 1) if (best - scores[option] <= TIE) tied += 1;
      for (let option = 0; option < rows.length; option += 1) {
        if (best - scores[option] <= TIE) places[option] += 1 / Math.max(1, tied);
      }
    }
    return inMillionths(places.map((count) => count / DRAWS));
  }

  function inMillionths(exact) {
    const parts = exact.map((share) => share * PARTS);
    const whole = parts.map(Math.floor);
    const byRemainder = parts.map((_, place) => place);
    byRemainder.sort((one, other) => (parts[other] % 1) - (parts[one] % 1));
    let left = Math.min(Math.max(0, PARTS - whole.reduce((sum, part) => sum + part, 0)), parts.length);
    for (const option of byRemainder) {
      if (left === 0) break;
      whole[option] += 1;
      left -= 1;
    }
    return whole.map((part) => part / PARTS);
  }

  return {
    // For rows of scores and a wish for each criterion: the order, and each option's score and share of first place.
    ranked(rows, wishes) {
      const scores = scored(rows, wishes);
      return { order: bestFirst(scores), scores, shares: shares(rows, wishes) };
    },
  };
})();
