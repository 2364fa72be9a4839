// Compares what a reader types with the exact value: whole numbers of any size, no rounding.
"use strict";

const judgeValue = (() => {
  const kPrefixes = new Map([
    ["", 0], ["p", -12], ["n", -9], ["u", -6], ["µ", -6], ["μ", -6], ["m", -3],
    ["k", 3], ["K", 3], ["M", 6], ["G", 9],
    ["pico", -12], ["nano", -9], ["micro", -6], ["milli", -3], ["kilo", 3], ["mega", 6],
    ["giga", 9], ["kil", 3], ["meg", 6],  // kilohm, megohm
  ]);
  const kUnits = new Map([
    ["ohm", "ohm"], ["ohms", "ohm"], ["Ohm", "ohm"], ["Ohms", "ohm"], ["Ω", "ohm"],
    ["\u2126", "ohm"],
    ["V", "V"], ["volt", "V"], ["volts", "V"],
    ["A", "A"], ["amp", "A"], ["amps", "A"], ["ampere", "A"], ["amperes", "A"],
    ["W", "W"], ["watt", "W"], ["watts", "W"],
    ["S", "S"], ["siemens", "S"],
  ]);
  // As IEC 60062 marks resistors: the letter stands where the point would.
  const kCodeLetters = new Map([["L", -3], ["R", 0], ["k", 3], ["K", 3], ["M", 6], ["G", 9]]);
  const kMostExponent = 99;

  const size = (n) => (n < 0n ? -n : n);

  // A rational n/d with d > 0; it need not be in lowest terms.
  const rational = (n, d) => (d < 0n ? { n: -n, d: -d } : { n, d });
  const scaled = (a, power) => (power < 0
    ? { n: a.n, d: a.d * 10n ** BigInt(-power) }
    : { n: a.n * 10n ** BigInt(power), d: a.d });
  const difference = (a, b) => rational(a.n * b.d - b.n * a.d, a.d * b.d);
  const compare = (a, b) => difference(a, b).n;
  const absolute = (a) => rational(size(a.n), a.d);

  // "12", "4.7", "1.2e3" without sign: its value, and the power of ten of its last digit.
  const readDecimal = (text) => {
    const match = /^(\d*)(?:\.(\d+))?(?:[eE]([+-]?\d{1,3}))?$/.exec(text);
    if (!match || (match[1] === "" && match[2] === undefined)) return null;
    const after = match[2] || "";
    const power = Number(match[3] || "0");
    if (Math.abs(power) > kMostExponent) return null;
    const digits = match[1] + after;
    const place = power - after.length;
    return { value: scaled({ n: BigInt(digits), d: 1n }, place), digits, place,
      isWhole: match[2] === undefined };
  };

  // "1 7/8", "8/3", "4.7", "4k7", without sign. A decimal knows its digits, a fraction does not.
  const readNumber = (text) => {
    const code = /^(\d*)([LRkKMG])(\d*)$/.exec(text);
    if (code && (code[3] || code[2] === "R") && code[1].length + code[3].length > 0) {
      const decimal = readDecimal((code[1] || "0") + (code[3] ? "." + code[3] : ""));
      const power = kCodeLetters.get(code[2]);
      return { value: scaled(decimal.value, power), digits: decimal.digits,
        place: decimal.place + power, isWhole: decimal.isWhole, isCode: true };
    }
    const mixed = /^(?:(\d+) +)?([\d.eE]+) *\/ *([\d.eE]+)$/.exec(text);
    if (!mixed) return readDecimal(text);
    const above = readDecimal(mixed[2]);
    const below = readDecimal(mixed[3]);
    if (!above || !below || below.value.n === 0n) return null;
    const whole = BigInt(mixed[1] || "0");
    const d = above.value.d * below.value.n;
    return { value: { n: above.value.n * below.value.d + whole * d, d } };
  };

  // "k", "mA", "kohm": a power of ten and a unit; either may be left out.
  const readUnit = (text) => {
    const word = text.trim();
    for (const [prefix, power] of kPrefixes) {
      if (!word.startsWith(prefix)) continue;
      const rest = word.slice(prefix.length).trim();
      if (rest === "") return { power, unit: "" };
      if (kUnits.has(rest)) return { power, unit: kUnits.get(rest) };
    }
    return null;
  };

  // What stands behind the last relation, with plain signs and spaces.
  const plain = (text) => text.replace(/^.*[=≈~]/, "").replace(/[\u2212\u2013]/g, "-")
    .replace(/[\u2044\u2215÷]/g, "/").replace(/\s+/g, " ").replace(/(\d),(\d)/g, "$1.$2")
    .replace(/ ?[×*·] ?10 ?\^? ?(?=[+-]?\d)/g, "e").trim();

  // Nothing where the text is not read.
  const read = (text) => {
    const match = /^([+-]?) ?(.*)$/.exec(plain(text));
    const body = match[2];
    // The longest beginning that is a number: "8/3 ohm", "4.7 k", "1 7/8", "4k7".
    for (let end = body.length; end > 0; --end) {
      const number = readNumber(body.slice(0, end).trim());
      const unit = number && readUnit(body.slice(end));
      if (!unit || (number.isCode && unit.power !== 0)) continue;
      const value = scaled(number.value, unit.power);
      return {
        value: match[1] === "-" ? rational(-value.n, value.d) : value,
        digits: number.digits,  // of a fraction there are none
        place: number.digits === undefined ? undefined : number.place + unit.power,
        isWhole: number.isWhole,
        unit: number.isCode ? "ohm" : unit.unit,
      };
    }
    return null;
  };

  // How many figures of a decimal agree with the exact value, to half a unit of the last; zeros at
  // the end of a whole number may be figures or not. 0: none.
  const agreeingFigures = (typed, exact) => {
    if (typed.digits === undefined || typed.value.n === 0n) return 0;
    const off = absolute(difference(typed.value, exact));
    let figures = typed.digits.replace(/^0+/, "").length;
    let place = typed.place;
    const zeros = typed.isWhole ? /0*$/.exec(typed.digits)[0].length : 0;
    for (let left = zeros; left >= 0; --left) {
      const half = scaled({ n: 1n, d: 2n }, place);
      if (compare(off, half) <= 0n) return figures;
      --figures;
      ++place;
    }
    return 0;
  };

  const isCutOff = (typed, exact, figures) => {
    if (typed.digits === undefined || figures < 2) return false;
    if ((typed.value.n < 0n) !== (exact.n < 0n)) return false;
    const off = compare(absolute(exact), absolute(typed.value));
    const missing = absolute(difference(typed.value, exact));
    return off > 0n && compare(missing, scaled({ n: 1n, d: 1n }, typed.place)) < 0n;
  };

  // Within half a percent, or two units of the last of three figures or more.
  const isClose = (typed, exact, figures) => {
    if (typed.digits === undefined || figures < 3) return false;
    const off = absolute(difference(typed.value, exact));
    const share = rational(size(exact.n) * 5n, exact.d * 1000n);
    return compare(off, share) <= 0n ||
      compare(off, scaled({ n: 2n, d: 1n }, typed.place)) <= 0n;
  };

  const isSame = (typed, exact, wanted) => compare(typed.value, exact) === 0n ||
    agreeingFigures(typed, exact) >= Math.min(2, wanted);

  const moved = (typed, power) => ({ ...typed, value: scaled(typed.value, power),
    place: typed.place === undefined ? undefined : typed.place + power });
  const turned = (typed) => ({ ...typed, value: rational(-typed.value.n, typed.value.d) });

  const isReciprocal = (typed, exact, wanted) => exact.n !== 0n &&
    isSame(typed, rational(exact.d, exact.n), wanted);

  /// text: what is typed. exact: "18/5", "-3". unit: "ohm", "V", "A", "W", "S". wanted: significant
  /// figures. Gives the key of a remark, whether the value is right, and a count of figures for
  /// the remark.
  return (text, exactText, unit, wanted) => {
    if (text.trim() === "") return { key: "empty", right: false };
    const typed = read(text);
    if (!typed) return { key: "unreadable", right: false };
    const [above, below] = exactText.split("/");
    const exact = { n: BigInt(above), d: BigInt(below || "1") };
    if (typed.unit !== "" && typed.unit !== unit) return { key: "unit", right: false };
    if (compare(typed.value, exact) === 0n) return { key: "exact", right: true };
    const agreeing = agreeingFigures(typed, exact);
    if (agreeing >= wanted) return { key: "rounded", right: true, figures: agreeing };
    if (agreeing > 0) return { key: "short", right: false, figures: wanted };
    const figures = typed.digits === undefined ? 0 : typed.digits.replace(/^0+/, "").length;
    if (isCutOff(typed, exact, figures)) return { key: "cut", right: false };
    if (isClose(typed, exact, figures)) return { key: "close", right: false };
    if (typed.value.n === 0n) return { key: "other", right: false };
    if (isSame(turned(typed), exact, wanted)) return { key: "sign", right: false };
    for (const power of [-3, 3, -6, 6, -9, 9]) {
      if (isSame(moved(typed, power), exact, wanted)) return { key: "prefix", right: false };
    }
    if (isReciprocal(typed, exact, wanted)) return { key: "reciprocal", right: false };
    return { key: "other", right: false };
  };
})();
