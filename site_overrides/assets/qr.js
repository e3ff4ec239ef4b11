// A text as a code that a phone reads (ISO/IEC 18004: bytes; level Q up to version 8, which is 49 modules, and for longer texts level M up to
// version 15), drawn as SVG with its quiet zone.
(function () {
  "use strict";
  // per level and version: error words a block, then groups of (blocks, data words)
  var BLOCKS = {
    M: [[10, 1, 16], [16, 1, 28], [26, 1, 44], [18, 2, 32], [24, 2, 43], [16, 4, 27], [18, 4, 31], [22, 2, 38, 2, 39], [22, 3, 36, 2, 37], [26, 4, 43, 1, 44],
      [30, 1, 50, 4, 51], [22, 6, 36, 2, 37], [22, 8, 37, 1, 38], [24, 4, 40, 5, 41], [24, 5, 41, 5, 42]],
    Q: [[13, 1, 13], [22, 1, 22], [18, 2, 17], [26, 2, 24], [18, 2, 15, 2, 16], [24, 4, 19], [18, 2, 14, 4, 15], [22, 4, 18, 2, 19]]
  };
  var LEVEL_BITS = { M: 0, Q: 24 };
  var ALIGN = [[], [6, 18], [6, 22], [6, 26], [6, 30], [6, 34], [6, 22, 38], [6, 24, 42], [6, 26, 46], [6, 28, 50], [6, 30, 54], [6, 32, 58], [6, 34, 62], [6, 26, 46, 66], [6, 26, 48, 70]];
  var EXP = [], LOG = [];
  for (var i = 0, x = 1; i < 255; i++) { EXP[i] = x; LOG[x] = i; x <<= 1; if (x & 256) x ^= 0x11d; }
  function times(a, b) { return a && b ? EXP[(LOG[a] + LOG[b]) % 255] : 0; }

  function capacity(version, level) {
    var row = BLOCKS[level][version - 1], words = 0;
    for (var i = 1; i < row.length; i += 2) words += row[i] * row[i + 1];
    return words;
  }
  function dataWords(bytes, version, level) {
    var bits = [], all = capacity(version, level) * 8, i;
    function put(value, count) { for (var b = count - 1; b >= 0; b--) bits.push((value >> b) & 1); }
    put(4, 4); put(bytes.length, version < 10 ? 8 : 16);
    bytes.forEach(function (byte) { put(byte, 8); });
    put(0, Math.min(4, all - bits.length));
    while (bits.length % 8) bits.push(0);
    for (i = 0; bits.length < all; i++) put(i % 2 ? 0x11 : 0xec, 8);
    var words = [];
    for (i = 0; i < bits.length; i += 8) words.push(parseInt(bits.slice(i, i + 8).join(""), 2));
    return words;
  }
  function errorWords(data, count) {
    var gen = [1], rest, i;
    for (i = 0; i < count; i++) {
      var more = gen.concat(0);
      gen.forEach(function (g, j) { more[j + 1] ^= times(g, EXP[i]); });
      gen = more;
    }
    rest = data.concat(new Array(count).fill(0));
    for (i = 0; i < data.length; i++) { var lead = rest[i]; if (lead) gen.forEach(function (g, j) { rest[i + j] ^= times(g, lead); }); }
    return rest.slice(data.length);
  }
  function interleaved(words, version, level) {
    var row = BLOCKS[level][version - 1], blocks = [], at = 0, out = [], i, j;
    for (i = 1; i < row.length; i += 2) for (j = 0; j < row[i]; j++) { blocks.push(words.slice(at, at + row[i + 1])); at += row[i + 1]; }
    var errors = blocks.map(function (block) { return errorWords(block, row[0]); }), most = Math.max.apply(null, blocks.map(function (b) { return b.length; }));
    for (i = 0; i < most; i++) blocks.forEach(function (block) { if (i < block.length) out.push(block[i]); });
    for (i = 0; i < row[0]; i++) errors.forEach(function (block) { out.push(block[i]); });
    return out;
  }

  // ---- the field: null where data goes
  function field(version) {
    var size = 17 + 4 * version, grid = [], centres = ALIGN[version - 1];
    for (var y = 0; y < size; y++) grid.push(new Array(size).fill(null));
    function square(cx, cy, radius, dark) {
      for (var dy = -radius; dy <= radius; dy++) for (var dx = -radius; dx <= radius; dx++) {
        if (grid[cy + dy] !== undefined && cx + dx >= 0 && cx + dx < size) grid[cy + dy][cx + dx] = dark(Math.max(Math.abs(dx), Math.abs(dy))) ? 1 : 0;
      }
    }
    [[3, 3], [size - 4, 3], [3, size - 4]].forEach(function (p) { square(p[0], p[1], 4, function (d) { return d < 2 || d === 3; }); });
    for (var i = 8; i < size - 8; i++) { grid[6][i] = grid[i][6] = i % 2 ? 0 : 1; }
    centres.forEach(function (cx) { centres.forEach(function (cy) {
      if ((cx === 6 && cy === 6) || (cx === 6 && cy === size - 7) || (cx === size - 7 && cy === 6)) return;
      square(cx, cy, 2, function (d) { return d !== 1; });
    }); });
    for (i = 0; i < 9; i++) { if (grid[8][i] === null) grid[8][i] = 0; if (grid[i][8] === null) grid[i][8] = 0; }
    for (i = 0; i < 8; i++) { grid[8][size - 1 - i] = 0; grid[size - 1 - i][8] = 0; }
    grid[size - 8][8] = 1;
    if (version > 6) versionMarks(grid, version, size);
    return grid;
  }
  function remainder(value, generator, bits) {
    var rest = value << bits, top = Math.floor(Math.log2(generator));
    for (var b = Math.floor(Math.log2(rest || 1)); b >= top; b--) if ((rest >> b) & 1) rest ^= generator << (b - top);
    return (value << bits) | rest;
  }
  function versionMarks(grid, version, size) {
    var code = remainder(version, 0x1f25, 12);
    for (var i = 0; i < 18; i++) { var bit = (code >> i) & 1, a = size - 11 + i % 3, b = Math.floor(i / 3); grid[a][b] = bit; grid[b][a] = bit; }
  }
  function formatMarks(grid, mask, level) {
    var size = grid.length, code = remainder(LEVEL_BITS[level] | mask, 0x537, 10) ^ 0x5412;
    for (var i = 0; i < 15; i++) {
      var bit = (code >> i) & 1;
      if (i < 6) grid[i][8] = bit; else if (i < 8) grid[i + 1][8] = bit; else if (i === 8) grid[8][7] = bit; else grid[8][14 - i] = bit;
      if (i < 8) grid[8][size - 1 - i] = bit; else grid[size - 15 + i][8] = bit;
    }
  }
  var MASKS = [
    function (x, y) { return (x + y) % 2 === 0; }, function (x, y) { return y % 2 === 0; }, function (x) { return x % 3 === 0; }, function (x, y) { return (x + y) % 3 === 0; },
    function (x, y) { return (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0; }, function (x, y) { return (x * y) % 2 + (x * y) % 3 === 0; },
    function (x, y) { return ((x * y) % 2 + (x * y) % 3) % 2 === 0; }, function (x, y) { return ((x + y) % 2 + (x * y) % 3) % 2 === 0; }
  ];
  function filled(empty, words, mask, level) {
    var size = empty.length, grid = empty.map(function (row) { return row.slice(); }), at = 0, up = true;
    for (var right = size - 1; right > 0; right -= 2, up = !up) {
      if (right === 6) right = 5;
      for (var n = 0; n < size; n++) for (var side = 0; side < 2; side++) {
        var y = up ? size - 1 - n : n, x = right - side;
        if (empty[y][x] !== null) continue;
        var bit = at < words.length * 8 ? (words[at >> 3] >> (7 - (at & 7))) & 1 : 0;
        grid[y][x] = bit ^ (MASKS[mask](x, y) ? 1 : 0);
        at++;
      }
    }
    formatMarks(grid, mask, level);
    return grid;
  }
  function penalty(grid) {
    var size = grid.length, sum = 0, dark = 0;
    function line(get) {
      var run = 1, text = "";
      for (var i = 0; i < size; i++) {
        text += get(i);
        if (i && get(i) === get(i - 1)) run++; else { if (run > 4) sum += run - 2; run = 1; }
      }
      if (run > 4) sum += run - 2;
      // what looks like a finder, with four light modules before or after it; outside the field it is light
      text = "0000" + text + "0000";
      for (var at = text.indexOf("1011101"); at >= 0; at = text.indexOf("1011101", at + 1)) if (text.substr(at - 4, 4) === "0000" || text.substr(at + 7, 4) === "0000") sum += 40;
    }
    for (var y = 0; y < size; y++) {
      line(function (i) { return grid[y][i]; });
      line(function (i) { return grid[i][y]; });
      for (var x = 0; x < size; x++) {
        dark += grid[y][x];
        if (x && y && grid[y][x] === grid[y][x - 1] && grid[y][x] === grid[y - 1][x] && grid[y][x] === grid[y - 1][x - 1]) sum += 3;
      }
    }
    return sum + 10 * Math.floor(Math.abs(dark * 20 / (size * size) - 10));
  }
  function smallest(bytes, level) {
    for (var version = 1; version <= BLOCKS[level].length; version++) if (bytes.length <= capacity(version, level) - (version < 10 ? 2 : 3)) return version;
    return 0;
  }
  function matrix(text) {
    var bytes = Array.from(new TextEncoder().encode(text)), level = smallest(bytes, "Q") ? "Q" : "M", version = smallest(bytes, level);
    if (!version) return null;
    var words = interleaved(dataWords(bytes, version, level), version, level), empty = field(version), best = null, least = Infinity;
    for (var mask = 0; mask < 8; mask++) {
      var grid = filled(empty, words, mask, level), cost = penalty(grid);
      if (cost < least) { least = cost; best = grid; }
    }
    return best;
  }
  // null where the text is too long for a code
  function svg(text, name) {
    var grid = matrix(text);
    if (!grid) return null;
    var size = grid.length + 8, path = "", made = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    grid.forEach(function (row, y) { row.forEach(function (dark, x) { if (dark) path += "M" + (x + 4) + "," + (y + 4) + "h1v1h-1z"; }); });
    made.setAttribute("viewBox", "0 0 " + size + " " + size); made.setAttribute("role", "img"); made.setAttribute("aria-label", name || text); made.setAttribute("class", "qr");
    made.innerHTML = '<rect width="' + size + '" height="' + size + '" fill="#fff"/><path d="' + path + '" fill="#000"/>';
    return made;
  }
  window.seatbookCode = { matrix: matrix, svg: svg };
})();
