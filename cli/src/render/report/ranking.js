"use strict";
// The order of the options under any wishes, worked out as the program does: the same musts, the same weights, the same
// shifts of the wishes, the same ties. Options come in the order that settles ties: one row of scores each, one score a
// criterion; how many rules each eases; what could set it aside, from which wish on; and what its composition costs.
const ranking = (() => {
  const TIE = 1e-9;
  const DRAWS = 4096;
  const MOST = 5;
  const STEP = 1;
  const PARTS = 1000000;
  const ASIDE = Infinity;
  // How much more a plan costs that is composed far worse; what one costs that is composed ill, but beside one so much better.
  const FAR_WORSE = 750;
  const ILL = 1875;
  const WELL_BESIDE = 1500;

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

  // Each wish drawn evenly from up to a step about it, by itself; a wish of 0 stays so. Then all over their sum.
  class Draws {
    constructor(wishes) {
      const any = wishes.some((wish) => wish > 0);
      const ends = (wish) => (wish > 0 ? [Math.max(wish - STEP, 0), Math.min(wish + STEP, MOST)] : [0, 0]);
      this.ends = wishes.map((wish) => (any ? ends(wish) : [1, 1]));
      this.weights = new Float64Array(wishes.length);
      this.generator = new SplitMix();
    }
    draw() {
      let sum = 0;
      for (let place = 0; place < this.weights.length; place += 1) {
        const [least, most] = this.ends[place];
        this.weights[place] = least + (most - least) * this.generator.fraction();
        sum += this.weights[place];
      }
      if (sum > 0) for (let place = 0; place < this.weights.length; place += 1) this.weights[place] /= sum;
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

  // What sets each option aside under the wishes; null where nothing does. What is composed ill stands behind what eases
  // nothing, breaks no must and is composed far better.
  function setAside({ eased, aside, composed, ill }, wishes) {
    const holds = (lapse) => wishes[lapse.wish] >= lapse.from;
    const own = aside.map((lapses) => lapses.find(holds) ?? null);
    const best = Math.min(...composed.filter((_, place) => eased[place] === 0 && own[place] === null));
    const most = Math.max(best + FAR_WORSE, Math.min(ILL, best + WELL_BESIDE));
    return own.map((lapse, place) => lapse ?? (composed[place] > most && holds(ill[place]) ? ill[place] : null));
  }

  // Places by tier, then by falling score.
  function byTier(scores, tiers) {
    const steps = [...new Set(tiers)].sort((one, other) => (one === other ? 0 : one - other));
    return steps.flatMap((step) => {
      const alike = scores.map((_, place) => place).filter((place) => tiers[place] === step);
      return bestFirst(alike.map((place) => scores[place])).map((place) => alike[place]);
    });
  }

  // Of all options, how often each of those comes first that may: the others stand behind them under any weights.
  function shares(rows, wishes, tiers) {
    const found = rows.map(() => 0);
    const foremost = Math.min(...tiers);
    if (foremost === ASIDE) return found;
    const may = rows.map((_, place) => place).filter((place) => tiers[place] === foremost);
    firstPlaces(may.map((place) => rows[place]), wishes).forEach((share, place) => { found[may[place]] = share; });
    return found;
  }

  function firstPlaces(rows, wishes) {
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
    // For the options and a wish for each criterion: the order, how each stands (the rules that it eases, or what sets it
    // aside), and its score and share of first place.
    ranked(options, wishes) {
      const rows = options.scores;
      const scores = scored(rows, wishes);
      const lapses = setAside(options, wishes);
      const tiers = lapses.map((lapse, place) => (lapse === null ? options.eased[place] : ASIDE));
      const order = byTier(scores, tiers);
      return { order, scores, lapses, tiers, shares: shares(rows, wishes, tiers) };
    },
  };
})();
