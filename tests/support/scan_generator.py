#!/usr/bin/python3
"""Seedable synthetic generator of hard 2-D-code camera frames (own code, numpy + OpenCV only).

Renders a 1920x1080 8-bit luminance frame: an oak-like surface carrying a label (or direct print)
with a QR (M/Q/H...) or Data Matrix ECC200 symbol, seen by a pinhole camera, with physical damage,
illumination, lens and sensor effects.  Everything is a deterministic function of (seed, params).

  scan_generator.py --list
  scan_generator.py --scene mix2 --sym qrM --seed 7 --out f.png     # one frame + JSON truth
  scan_generator.py --scene mix2 --sym dm --seeds 0-19 --outdir d   # many frames + manifest.json
  scan_generator.py --scene mix2 --sym qrQ --seed 7 --frames 30 --out burst.png  # hand-held burst
  scan_generator.py --scene mix2 --sym qrH --seeds 7-99 --stream             # raw frames to stdout
  scan_generator.py --selftest

Library use:  P = scene('mix2', seed, sym='qrM', payload='...');  img, truth = render(P, seed)
"""
import argparse, json, math, os, struct, sys
import numpy as np
import cv2

# ------------------------------------------------------------------ GF(256) / Reed-Solomon
def _gf(poly):
    e = [0] * 512; l = [0] * 256; x = 1
    for i in range(255):
        e[i] = x; l[x] = i; x <<= 1
        if x & 256: x ^= poly
    for i in range(255, 512): e[i] = e[i - 255]
    return e, l
QE, QL = _gf(0x11D)      # QR
DE, DL = _gf(0x12D)      # Data Matrix

def rs(data, n, E, L, first):
    g = [1]
    for i in range(n):
        r = E[(i + first) % 255]; ng = g + [0]
        for j in range(len(g)):
            if g[j]: ng[j + 1] ^= E[(L[g[j]] + L[r]) % 255]
        g = ng
    rem = [0] * n
    for d in data:
        f = d ^ rem[0]; rem = rem[1:] + [0]
        if f:
            for j in range(n):
                if g[j + 1]: rem[j] ^= E[(L[f] + L[g[j + 1]]) % 255]
    return rem

# ------------------------------------------------------------------ QR encoder (versions 1..10)
_EC = {'L': [7,10,15,20,26,18,20,24,30,18], 'M': [10,16,26,18,24,16,18,22,22,26],
       'Q': [13,22,18,26,18,24,18,22,20,24], 'H': [17,28,22,16,22,28,26,26,24,28]}
_NB = {'L': [1,1,1,1,1,2,2,2,2,4], 'M': [1,1,1,2,2,4,4,4,5,5],
       'Q': [1,1,2,2,4,4,6,6,8,8], 'H': [1,1,2,4,4,4,5,6,8,8]}
_AN = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:'

def _raw_codewords(v):
    r = (16 * v + 128) * v + 64
    if v >= 2:
        a = v // 7 + 2; r -= (25 * a - 10) * a - 55
        if v >= 7: r -= 36
    return r // 8

def qr_matrix(text, level='M', min_version=1, byte_mode=False, mask=None):
    """QR Code Model 2 as bool array (True = dark), no quiet zone."""
    alnum = all(c in _AN for c in text) and not byte_mode
    for v in range(min_version, 11):
        cap = (_raw_codewords(v) - _EC[level][v-1] * _NB[level][v-1]) * 8
        cci = (9 if v < 10 else 11) if alnum else (8 if v < 10 else 16)
        n = len(text) if alnum else len(text.encode())
        need = 4 + cci + ((n // 2) * 11 + (n % 2) * 6 if alnum else 8 * n)
        if need <= cap: break
    else: raise ValueError('payload too long')
    bits = []
    def put(val, k): bits.extend((val >> i) & 1 for i in range(k - 1, -1, -1))
    if alnum:
        put(2, 4); put(n, cci)
        for i in range(0, n - 1, 2): put(_AN.index(text[i]) * 45 + _AN.index(text[i+1]), 11)
        if n % 2: put(_AN.index(text[-1]), 6)
    else:
        put(4, 4); put(n, cci)
        for b in text.encode(): put(b, 8)
    put(0, min(4, cap - len(bits))); put(0, -len(bits) % 8)
    pad = 0xEC
    while len(bits) < cap: put(pad, 8); pad ^= 0xEC ^ 0x11
    data = [int(''.join(map(str, bits[i:i+8])), 2) for i in range(0, cap, 8)]
    nb, ec, tot = _NB[level][v-1], _EC[level][v-1], _raw_codewords(v)
    nshort, slen = nb - tot % nb, tot // nb
    blocks, k = [], 0
    for i in range(nb):
        d = data[k:k + slen - ec + (0 if i < nshort else 1)]; k += len(d)
        blocks.append((d, rs(d, ec, QE, QL, 0)))
    out = []
    for i in range(slen - ec + 1):
        for d, _ in blocks:
            if i < len(d): out.append(d[i])
    for i in range(ec):
        for _, e in blocks: out.append(e[i])
    N = 17 + 4 * v
    M = np.zeros((N, N), bool); F = np.zeros((N, N), bool)
    def setf(r, c, val):
        if 0 <= r < N and 0 <= c < N: M[r, c] = val; F[r, c] = True
    for i in range(N): setf(6, i, i % 2 == 0); setf(i, 6, i % 2 == 0)
    for (r0, c0) in ((3, 3), (3, N - 4), (N - 4, 3)):
        for dr in range(-4, 5):
            for dc in range(-4, 5):
                m = max(abs(dr), abs(dc)); setf(r0 + dr, c0 + dc, m not in (2, 4))
    if v >= 2:
        na = v // 7 + 2
        step = 26 if v == 32 else (v * 4 + na * 2 + 1) // (na * 2 - 2) * 2
        pos = [6] + [N - 7 - i * step for i in range(na - 2, -1, -1)]
        for r in pos:
            for c in pos:
                if (r, c) in ((6, 6), (6, N - 7), (N - 7, 6)): continue
                for dr in range(-2, 3):
                    for dc in range(-2, 3): setf(r + dr, c + dc, max(abs(dr), abs(dc)) != 1)
    def fmt(mask_):
        d = {'L': 1, 'M': 0, 'Q': 3, 'H': 2}[level] << 3 | mask_; r = d
        for _ in range(10): r = (r << 1) ^ ((r >> 9) * 0x537)
        b = (d << 10 | r) ^ 0x5412; g = lambda i: bool(b >> i & 1)
        for i in range(6): setf(i, 8, g(i))
        setf(7, 8, g(6)); setf(8, 8, g(7)); setf(8, 7, g(8))
        for i in range(9, 15): setf(8, 14 - i, g(i))
        for i in range(8): setf(8, N - 1 - i, g(i))
        for i in range(8, 15): setf(N - 15 + i, 8, g(i))
        setf(N - 8, 8, True)
    fmt(0)
    if v >= 7:
        r = v
        for _ in range(12): r = (r << 1) ^ ((r >> 11) * 0x1F25)
        b = v << 12 | r
        for i in range(18):
            a, c = N - 11 + i % 3, i // 3; setf(a, c, bool(b >> i & 1)); setf(c, a, bool(b >> i & 1))
    stream = [(x >> k) & 1 for x in out for k in range(7, -1, -1)]
    i = 0; right = N - 1
    while right >= 1:
        if right == 6: right = 5
        for vert in range(N):
            for j in range(2):
                c = right - j; up = ((right + 1) & 2) == 0; r = N - 1 - vert if up else vert
                if not F[r, c]:
                    if i < len(stream): M[r, c] = bool(stream[i]); i += 1
        right -= 2
    R, C = np.mgrid[0:N, 0:N]
    masks = [(R + C) % 2 == 0, R % 2 == 0, C % 3 == 0, (R + C) % 3 == 0, (C // 3 + R // 2) % 2 == 0,
             R * C % 2 + R * C % 3 == 0, (R * C % 2 + R * C % 3) % 2 == 0, ((R + C) % 2 + R * C % 3) % 2 == 0]
    best = None
    for k in ([mask] if mask is not None else range(8)):
        X = M.copy(); X[~F] ^= masks[k][~F]
        base, M = M, X; fmt(k); X = M.copy(); M = base
        p = 0
        for Y in (X, X.T):
            for row in Y:
                runs, st = [], 0
                for t in range(1, N + 1):
                    if t == N or row[t] != row[st]: runs.append((row[st], t - st)); st = t
                p += sum(3 + l - 5 for _, l in runs if l >= 5)
                s = ''.join('1' if q else '0' for q in row)
                p += 40 * (s.count('10111010000') + s.count('00001011101'))
        q = X[:-1, :-1]; p += 3 * int(((q == X[1:, :-1]) & (q == X[:-1, 1:]) & (q == X[1:, 1:])).sum())
        p += 10 * int(abs(X.mean() * 100 - 50) / 5)
        if best is None or p < best[0]: best = (p, X)
    return best[1]

# ------------------------------------------------------------------ Data Matrix ECC200 encoder (square, ASCII + C40)
_DM = [(10,3,5,1),(12,5,7,1),(14,8,10,1),(16,12,12,1),(18,18,14,1),(20,22,18,1),(22,30,20,1),(24,36,24,1),(26,44,28,1),(32,62,36,4)]

def _dm_ascii(t):
    o, i = [], 0
    while i < len(t):
        if i + 1 < len(t) and t[i].isdigit() and t[i+1].isdigit(): o.append(130 + int(t[i:i+2])); i += 2
        else: o.append(ord(t[i]) + 1); i += 1
    return o

def _dm_c40(t):
    v = []
    for c in t:
        if c == ' ': v.append(3)
        elif c.isdigit(): v.append(ord(c) - 48 + 4)
        elif 'A' <= c <= 'Z': v.append(ord(c) - 65 + 14)
        elif 33 <= ord(c) <= 47: v += [1, ord(c) - 33]
        else: return None
    k = len(v) // 3 * 3
    # only whole triples go in C40; the tail (must map to whole characters) is ASCII
    n, used = 0, 0
    for ci, c in enumerate(t):
        w = 2 if 33 <= ord(c) <= 47 else 1
        if n + w > k: break
        n += w; used = ci + 1
    if n % 3: return None
    o = [230]
    for i in range(0, n, 3):
        x = 1600 * v[i] + 40 * v[i+1] + v[i+2] + 1; o += [x >> 8, x & 255]
    return o + [254] + _dm_ascii(t[used:])

def dm_matrix(text, min_size=10):
    """Square Data Matrix ECC200 incl. finder, as bool array (True = dark), no quiet zone."""
    cw = _dm_ascii(text); alt = _dm_c40(text)
    if alt is not None and len(alt) < len(cw): cw = alt
    for size, nd, ne, reg in _DM:
        if len(cw) <= nd and size >= min_size: break
    else: raise ValueError('payload too long')
    if len(cw) < nd: cw.append(129)
    while len(cw) < nd:
        p = len(cw) + 1; r = 129 + (149 * p) % 253 + 1; cw.append(r if r <= 254 else r - 254)
    full = cw + rs(cw, ne, DE, DL, 1)
    side = size - 2 * (2 if reg == 4 else 1)
    A = -np.ones((side, side), int); nr = nc = side
    def mod(r, c, ch, bit):
        if r < 0: r += nr; c += 4 - ((nr + 4) % 8)
        if c < 0: c += nc; r += 4 - ((nc + 4) % 8)
        A[r, c] = full[ch] >> (8 - bit) & 1
    def utah(r, c, ch):
        for k, (dr, dc) in enumerate(((-2,-2),(-2,-1),(-1,-2),(-1,-1),(-1,0),(0,-2),(0,-1),(0,0))): mod(r+dr, c+dc, ch, k+1)
    def corner(ch, cells):
        for k, (r, c) in enumerate(cells): mod(r, c, ch, k + 1)
    ch, r, c = 0, 4, 0
    while True:
        if r == nr and c == 0: corner(ch, [(nr-1,0),(nr-1,1),(nr-1,2),(0,nc-2),(0,nc-1),(1,nc-1),(2,nc-1),(3,nc-1)]); ch += 1
        if r == nr-2 and c == 0 and nc % 4: corner(ch, [(nr-3,0),(nr-2,0),(nr-1,0),(0,nc-4),(0,nc-3),(0,nc-2),(0,nc-1),(1,nc-1)]); ch += 1
        if r == nr-2 and c == 0 and nc % 8 == 4: corner(ch, [(nr-3,0),(nr-2,0),(nr-1,0),(0,nc-2),(0,nc-1),(1,nc-1),(2,nc-1),(3,nc-1)]); ch += 1
        if r == nr+4 and c == 2 and nc % 8 == 0: corner(ch, [(nr-1,0),(nr-1,nc-1),(0,nc-3),(0,nc-2),(0,nc-1),(1,nc-3),(1,nc-2),(1,nc-1)]); ch += 1
        while True:
            if r < nr and c >= 0 and A[r, c] < 0: utah(r, c, ch); ch += 1
            r -= 2; c += 2
            if not (r >= 0 and c < nc): break
        r += 1; c += 3
        while True:
            if r >= 0 and c < nc and A[r, c] < 0: utah(r, c, ch); ch += 1
            r += 2; c -= 2
            if not (r < nr and c >= 0): break
        r += 3; c += 1
        if not (r < nr or c < nc): break
    if A[nr-1, nc-1] < 0: A[nr-1, nc-1] = A[nr-2, nc-2] = 1; A[nr-1, nc-2] = A[nr-2, nc-1] = 0
    k = 2 if reg == 4 else 1; s = side // k; out = np.zeros((size, size), bool)
    for i in range(k):
        for j in range(k):
            y, x = i * (s + 2), j * (s + 2)
            out[y:y+s+2, x] = True; out[y+s+1, x:x+s+2] = True
            out[y, x:x+s+2:2] = True; out[y+1:y+s+2:2, x+s+1] = True
            out[y+1:y+1+s, x+1:x+1+s] = A[i*s:(i+1)*s, j*s:(j+1)*s] > 0
    return out

def symbol(sym, payload):
    """sym: qrL/qrM/qrQ/qrH (alphanumeric if possible), digit = minimum version (qrQ2), suffix 'b' forces byte mode; dm, dm20 (min size 20)."""
    if sym.startswith('qr'): return qr_matrix(payload, sym[2], int(''.join(c for c in sym[3:] if c.isdigit()) or 1), sym.endswith('b'))
    if sym.startswith('dm'): return dm_matrix(payload, int(sym[2:] or 10))
    raise ValueError(sym)

def payload_for(seed, n=16):
    """Neutral asset id, QR-alphanumeric alphabet without look-alike letters."""
    r = np.random.default_rng([seed, 101]); a = '23456789ABCDEFGHJKMNPQRSTVWXYZ'
    s = ''.join(a[i] for i in r.integers(0, len(a), n))
    return s[:3] + '-' + s[3:n-1] if n > 5 else s

_CHECK = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'
_CODE = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
def label_for(seed):
    """The text of a barrel's label: "S1", mark, serial and the ISO/IEC 7064 MOD 37,36 check character."""
    r = np.random.default_rng([seed, 102])
    while True:
        s = ''.join(_CODE[i] for i in r.integers(0, len(_CODE), 9)); p = 36
        for c in s: p = ((p + _CHECK.index(c)) % 36 or 36) * 2 % 37
        c = _CHECK[(37 - p) % 36]
        if c in _CODE: return 'S1' + s + c

# ------------------------------------------------------------------ textures
W, H = 1920, 1080
_cache = {}
def _noise_pool():
    if 'n' not in _cache: _cache['n'] = np.random.default_rng(12345).standard_normal((H + 400, W + 400)).astype(np.float32)
    return _cache['n']

def fractal(rng, h, w, ax=1.0, ay=1.0, octaves=4, base=24):
    """smooth noise in [0,1], stretched by ax, ay (grain)"""
    out = np.zeros((h, w), np.float32); amp = 1.0
    for o in range(octaves):
        gh = max(2, int(h / (base * ay) * 2**o) + 2); gw = max(2, int(w / (base * ax) * 2**o) + 2)
        out += amp * cv2.resize(rng.random((min(gh, h), min(gw, w))).astype(np.float32), (w, h), interpolation=cv2.INTER_CUBIC); amp *= .55
    out -= out.min(); out /= max(out.max(), 1e-6); return out

def oak(k):
    """albedo 0..1 of an oak-like head, 2400x2400 at 0.5 mm/px: staves, grain, pores, knots, stamp-like clutter"""
    key = ('oak', k)
    if key in _cache: return _cache[key]
    r = np.random.default_rng([k, 77]); n = 1600
    g = .26 + .22 * fractal(r, n, n, ax=12, ay=.5, octaves=5, base=30) + .10 * fractal(r, n, n, 3, 3, 3, 200)
    pores = fractal(r, n, n, ax=6, ay=.12, octaves=2, base=16); g -= .10 * (pores > .72)
    y = 0
    while y < n:
        y += int(r.integers(120, 230)); g[y:y+3] *= .35; g[y+3:] *= r.uniform(.93, 1.07)
    for _ in range(int(r.integers(3, 9))):
        c = (int(r.integers(n)), int(r.integers(n)))
        cv2.ellipse(g, c, (int(r.integers(20, 60)), int(r.integers(8, 25))), 0, 0, 360, float(r.uniform(.08, .2)), -1, cv2.LINE_AA)
    for _ in range(int(r.integers(2, 6))):     # printed/branded clutter
        c = (int(r.integers(n)), int(r.integers(n)))
        cv2.putText(g, ''.join(chr(65 + i) for i in r.integers(0, 26, 6)), c, cv2.FONT_HERSHEY_DUPLEX, float(r.uniform(1.5, 4)), float(r.uniform(.05, .2)), int(r.integers(3, 9)), cv2.LINE_AA)
    _cache[key] = np.clip(g, .03, .8).astype(np.float32); return _cache[key]

# ------------------------------------------------------------------ parameters
DEFAULT = dict(
    sym='qrM', payload=None, payload_len=16, label_mm=40.0, quiet=None,  # label_mm = symbol + quiet zones; quiet in modules (QR 4, DM 1.. see render)
    symbol_mm=None,            # overrides label_mm if set
    carrier='label',           # 'label' (white stock), 'wood' (direct print on oak)
    ink=.06, paper=.82,        # albedos; for carrier 'wood' paper = oak
    inverse=False, distance=.5, tilt=15.0, tilt_axis=None, roll=None, offset=None,  # deg; offset in px from the centre (dx, dy)
    hfov=65.0, radius_mm=None, curve_axis='v',  # cylinder radius (None = flat)
    defocus=0.0, motion=0.0, motion_dir=None, # px
    exposure=.62,              # mean level multiplier (1 -> white paper ~ 210)
    noise=2.0,                 # sigma in 8-bit counts at mid grey (half signal dependent)
    illum=.15,                 # peak-to-peak illumination gradient
    glare=0.0, glare_size=.5, glare_pos=None,    # peak (1 = full white), sigma as fraction of the symbol, offset in symbol units
    scorch=0.0, stain=0.0, grain=0.0, scratch=0, # coverage / strength 0..1, count
    drops=0,                   # water droplets on the label
    occlude=0.0, occlude_mode='edge',  # fraction of symbol area; edge / corner / blob
    wrinkle=0.0,               # mm amplitude of label wrinkles
    jpeg=0)

def _vec(rng, lo, hi): return float(rng.uniform(lo, hi))

def scene(name, seed, **over):
    """named scenario -> parameter dict (deterministic in seed)"""
    r = np.random.default_rng([seed, 202]); P = dict(DEFAULT)
    if name == 'nominal': pass
    elif name.startswith('mix'):
        s = {'mix0': 0., 'mix1': .33, 'mix2': .66, 'mix3': 1.}[name]   # severity
        pick = lambda p: r.random() < p
        P['distance'] = _vec(r, .30, .45 + .55 * s); P['tilt'] = _vec(r, 0, 20 + 40 * s)
        P['label_mm'] = float(r.choice([30, 40, 50, 60])) if 'label_mm' not in over else over['label_mm']
        P['radius_mm'] = None if pick(.7 - .3 * s) else _vec(r, 400 - 320 * s, 600)
        P['curve_axis'] = 'v' if pick(.5) else 'h'
        P['exposure'] = _vec(r, .62 - .45 * s, .75); P['noise'] = _vec(r, 1, 3 + 9 * s)
        P['illum'] = _vec(r, .05, .2 + .5 * s)
        P['defocus'] = _vec(r, 0, .6 + 2.4 * s) if pick(.3 + .4 * s) else 0.
        P['motion'] = _vec(r, 0, 2 + 7 * s) if pick(.3 + .4 * s) else 0.
        if pick(.15 + .35 * s): P['glare'] = _vec(r, .3, .5 + .8 * s); P['glare_size'] = _vec(r, .1, .2 + .25 * s)
        if pick(.2 + .4 * s): P['stain'] = _vec(r, .1, .2 + .5 * s)
        if pick(.15 + .35 * s): P['scorch'] = _vec(r, .02, .05 + .15 * s)
        if pick(.2 + .4 * s): P['drops'] = int(r.integers(1, 3 + int(12 * s)))
        if pick(.1 + .35 * s): P['occlude'] = _vec(r, .01, .03 + .15 * s); P['occlude_mode'] = str(r.choice(['edge', 'corner', 'blob']))
        P['scratch'] = int(r.integers(0, 1 + int(6 * s)))
        if pick(.3 * s): P['paper'] = _vec(r, .35, .6); P['ink'] = _vec(r, .08, .2)
        P['wrinkle'] = _vec(r, 0, .8 * s) if pick(.4) else 0.
    else: raise ValueError(name)
    P.update(over); return P

# ------------------------------------------------------------------ rendering
def render(P, seed, jitter=None):
    """-> (uint8 HxW luminance, truth dict). jitter = frame index of a hand-held burst (same label and damage)."""
    P = {**DEFAULT, **P}; rng = np.random.default_rng([seed, 303]); payload = P['payload'] or payload_for(seed, P['payload_len'])
    fr = rng if jitter is None else np.random.default_rng([seed, 404, jitter])   # per-frame randomness
    M = symbol(P['sym'], payload); N = M.shape[0]
    qz = P['quiet'] if P['quiet'] is not None else (4 if P['sym'].startswith('qr') else 2)
    mod = P['symbol_mm'] / N if P['symbol_mm'] else P['label_mm'] / (N + 2 * qz)
    sym_mm = mod * N; lab_mm = mod * (N + 2 * qz)
    # --- label texture (albedo), px per module
    pm = 10; B = int(round(6.0 / mod * pm)) if P['carrier'] == 'label' else 0   # 6 mm extra stock below for text
    s = (N + 2 * qz) * pm; th = s + B
    alb = np.full((th, s), P['paper'], np.float32); msk = np.ones((th, s), np.float32)
    if P['carrier'] == 'wood':
        o = oak(seed % 6); y0, x0 = int(rng.integers(0, 900)), int(rng.integers(0, 900)); k = max(8, int(lab_mm / .5))
        alb = cv2.resize(o[y0:y0+k, x0:x0+k], (s, th), interpolation=cv2.INTER_CUBIC)
    D = np.kron(M, np.ones((pm, pm), np.float32)); q = qz * pm
    D = cv2.GaussianBlur(D, (0, 0), pm * .04)
    if P['inverse']:
        if P['carrier'] == 'wood': alb[q:q+N*pm, q:q+N*pm] = alb[q:q+N*pm, q:q+N*pm] * (1 - D) + .78 * D
        else: alb[:s] = P['ink']; alb[q:q+N*pm, q:q+N*pm] = P['ink'] * (1 - D) + P['paper'] * D
    else: alb[q:q+N*pm, q:q+N*pm] = alb[q:q+N*pm, q:q+N*pm] * (1 - D) + P['ink'] * D
    if B > pm: cv2.putText(alb, payload, (q // 2, s + int(B * .6)), cv2.FONT_HERSHEY_SIMPLEX, (s - q) / (len(payload) * 21.), P['ink'], max(1, pm // 4), cv2.LINE_AA)
    # --- damage in label space
    if P['grain'] > 0: alb *= 1 - P['grain'] * .8 * fractal(rng, th, s, 10, .4, 4, pm * 4)
    if P['stain'] > 0:
        f = fractal(rng, th, s, 1, 1, 4, s / 3); t = np.quantile(f, 1 - min(.95, P['stain'])); m = np.clip((f - t) / .06, 0, 1)
        ring = np.exp(-((f - t) / .02) ** 2); alb *= 1 - .55 * m - .25 * ring
    if P['scorch'] > 0:
        f = fractal(rng, th, s, 1, 1, 3, s / 2.5); t = np.quantile(f, 1 - P['scorch']); m = np.clip((f - t) / .08 + .3, 0, 1)
        alb = alb * (1 - m) + .035 * m
    for _ in range(int(P['scratch'])):
        p1 = rng.integers(0, s, 2); p2 = p1 + rng.integers(-s, s, 2)
        cv2.line(alb, tuple(map(int, p1)), tuple(map(int, p2)), float(rng.choice([.1, .75])), int(rng.integers(1, max(2, pm // 2))), cv2.LINE_AA)
    if P['occlude'] > 0:
        tone = float(rng.choice([.08, .3, .5])); A = P['occlude'] * (N * pm) ** 2; S = N * pm
        side = int(rng.integers(4))
        if P['occlude_mode'] == 'edge':
            d = int(A / S); bx = [(q, q, q + S, q + d), (q, q + S - d, q + S, q + S), (q, q, q + d, q + S), (q + S - d, q, q + S, q + S)][side]
            cv2.rectangle(alb, bx[:2], bx[2:], tone, -1)
        elif P['occlude_mode'] == 'corner':
            d = int(math.sqrt(A)); cx, cy = [(q, q), (q + S - d, q), (q, q + S - d), (q + S - d, q + S - d)][side]
            cv2.rectangle(alb, (cx, cy), (cx + d, cy + d), tone, -1)
        else:
            rr = math.sqrt(A / math.pi); c = (q + int(rng.uniform(.25, .75) * S), q + int(rng.uniform(.25, .75) * S))
            a = rng.uniform(.7, 1.4); cv2.ellipse(alb, c, (int(rr * a), int(rr / a)), float(rng.uniform(0, 180)), 0, 360, tone, -1, cv2.LINE_AA)
    spec = np.zeros((th, s), np.float32)
    if P['drops']:
        mx, my = np.meshgrid(np.arange(s, dtype=np.float32), np.arange(th, dtype=np.float32)); shade = np.ones((th, s), np.float32)
        for _ in range(int(P['drops'])):
            cx, cy = rng.uniform(0, s), rng.uniform(0, s); R = rng.uniform(.6, 2.8) / mod * pm   # 0.6-2.8 mm radius
            dx, dy = mx - cx, my - cy; d = np.sqrt(dx*dx + dy*dy) / R; ins = d < 1
            k = .35 * (1 - np.sqrt(np.clip(1 - d*d, 0, 1)))     # lens: magnify the centre, compress the rim
            mx = np.where(ins, mx - dx * (.25 - k), mx); my = np.where(ins, my - dy * (.25 - k), my)
            shade = np.where(ins & (d > .82), shade * .7, shade)
            hx, hy = cx - .35 * R, cy - .35 * R
            spec += .9 * np.exp(-(((np.arange(s)[None] - hx)**2 + (np.arange(th)[:, None] - hy)**2) / (2 * (.16 * R) ** 2))).astype(np.float32)
        alb = cv2.remap(alb, mx.astype(np.float32), my.astype(np.float32), cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE) * shade
    # --- camera geometry
    f = (W / 2) / math.tan(math.radians(P['hfov'] / 2)); dist = P['distance'] * 1000.
    ta = P['tilt_axis'] if P['tilt_axis'] is not None else float(rng.uniform(0, 360)); roll = P['roll'] if P['roll'] is not None else float(rng.uniform(-20, 20))
    off = P['offset'] if P['offset'] is not None else (float(rng.uniform(-300, 300)), float(rng.uniform(-160, 160)))
    tilt = P['tilt']
    if jitter is not None:
        dist *= 1 + fr.normal(0, .02); tilt = max(0, tilt + fr.normal(0, 2.5)); ta += fr.normal(0, 5); roll += fr.normal(0, 2)
        off = (off[0] + fr.normal(0, 25), off[1] + fr.normal(0, 25))
    a = math.radians(ta); ax = np.array([math.cos(a), math.sin(a), 0.]); Rt, _ = cv2.Rodrigues(ax * math.radians(tilt))
    Rr, _ = cv2.Rodrigues(np.array([0, 0, math.radians(roll)])); R = Rt @ Rr
    T = np.array([off[0] / f * dist, off[1] / f * dist, dist])
    R_mm = P['radius_mm']
    def pixel_to_surface(u, v):
        a_, b_ = (u - W / 2) / f, (v - H / 2) / f       # ray in the surface frame: R^T (a, b, 1)
        d = [np.float32(R[0, k]) * a_ + np.float32(R[1, k]) * b_ + np.float32(R[2, k]) for k in range(3)]
        o = [np.float32(q) for q in -(R.T @ T)]
        if R_mm is None:
            t = -o[2] / d[2]; X = o[0] + t * d[0]; Y = o[1] + t * d[1]; ok = t > 0
        else:        # cylinder through the origin, axis v (y) or h (x), bulging to the camera (-z)
            i, j = (0, 1) if P['curve_axis'] == 'v' else (1, 0)
            A = d[i]**2 + d[2]**2; Bq = o[i] * d[i] + (o[2] - np.float32(R_mm)) * d[2]; Cq = np.float32(float(o[i])**2 + (float(o[2]) - R_mm)**2 - R_mm**2)
            disc = Bq * Bq - A * Cq; ok = disc > 0; t = (-Bq - np.sqrt(np.where(ok, disc, 0))) / A
            p = o[i] + t * d[i]; z = o[2] + t * d[2]; arc = np.float32(R_mm) * np.arctan2(p, np.float32(R_mm) - z); other = o[j] + t * d[j]
            X, Y = (arc, other) if i == 0 else (other, arc)
        return X, Y, ok
    def project(X, Y):
        X = np.asarray(X, float); Y = np.asarray(Y, float)
        if R_mm is None: p = np.stack([X, Y, 0 * X], -1)
        elif P['curve_axis'] == 'v': p = np.stack([R_mm * np.sin(X / R_mm), Y, R_mm * (1 - np.cos(X / R_mm))], -1)
        else: p = np.stack([X, R_mm * np.sin(Y / R_mm), R_mm * (1 - np.cos(Y / R_mm))], -1)
        c = p @ R.T + T; return c[..., 0] / c[..., 2] * f + W / 2, c[..., 1] / c[..., 2] * f + H / 2
    h = sym_mm / 2; cu, cv_ = project([-h, h, h, -h], [-h, -h, h, h])
    # --- background: oak seen through the same camera, at half resolution; label ROI at 2-3x supersampling
    wood = oak(seed % 6); oy, ox = rng.uniform(0, 400, 2)
    u, v = np.meshgrid(np.arange(0, W, 4, dtype=np.float32), np.arange(0, H, 4, dtype=np.float32))
    X, Y, ok = pixel_to_surface(u, v); X = np.where(ok, X, 1e4); Y = np.where(ok, Y, 1e4)
    mx = cv2.resize((X / .5 + 400 + ox).astype(np.float32), (W, H), interpolation=cv2.INTER_LINEAR); my = cv2.resize((Y / .5 + 400 + oy).astype(np.float32), (W, H), interpolation=cv2.INTER_LINEAR)
    img = cv2.remap(wood, mx, my, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REFLECT)
    L = lab_mm / 2 + B / pm * mod + 2; lu, lv = project([-L, L, L, -L, 0, L, 0, -L], [-L, -L, L, L, -L, 0, L, 0])
    x0, x1 = int(max(0, lu.min() - 4)), int(min(W, lu.max() + 4)); y0, y1 = int(max(0, lv.min() - 4)), int(min(H, lv.max() + 4))
    specimg = np.zeros((H, W), np.float32)
    if x1 > x0 and y1 > y0:
        ss = 3 if f / dist * mod < 4 else 2
        u, v = np.meshgrid((x0 + (np.arange((x1 - x0) * ss) + .5) / ss - .5).astype(np.float32), (y0 + (np.arange((y1 - y0) * ss) + .5) / ss - .5).astype(np.float32))
        X, Y, ok = pixel_to_surface(u, v)
        if P['wrinkle'] > 0:
            wr = fractal(rng, 200, 200, 1, 3, 2, 50) - .5
            sx = ((X + L) / (2 * L) * 199).astype(np.float32); sy = ((Y + L) / (2 * L) * 199).astype(np.float32)
            dwr = cv2.remap(wr, sx, sy, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE); X = X + 2 * P['wrinkle'] * dwr; Y = Y + 1.2 * P['wrinkle'] * dwr
        tx = ((X + lab_mm / 2) / mod * pm - .5).astype(np.float32); ty = ((Y + lab_mm / 2) / mod * pm - .5).astype(np.float32)
        tx[~ok] = -99
        lod = (pm / mod) / (f / dist * ss)      # texture px per supersampled px -> prefilter
        tex = cv2.GaussianBlur(alb, (0, 0), .5 * lod) if lod > 1.2 else alb
        a = cv2.remap(tex, tx, ty, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=0); m = cv2.remap(msk, tx, ty, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=0)
        sp = cv2.remap(spec, tx, ty, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=0)
        dn = lambda z: cv2.resize(z, (x1 - x0, y1 - y0), interpolation=cv2.INTER_AREA)
        a, m, sp = dn(a * m), dn(m), dn(sp)
        img[y0:y1, x0:x1] = img[y0:y1, x0:x1] * (1 - m) + a; specimg[y0:y1, x0:x1] += sp
    # --- light
    gx, gy = np.meshgrid(np.linspace(-.5, .5, W, dtype=np.float32), np.linspace(-.5, .5, H, dtype=np.float32)); th_ = float(fr.uniform(0, 2 * math.pi))
    img *= (1 + P['illum'] * 2 * (gx * math.cos(th_) + gy * math.sin(th_))).astype(np.float32)
    cx, cy = float(np.mean(cu)), float(np.mean(cv_)); spx = sym_mm * f / dist
    if P['glare'] > 0:
        gp = P['glare_pos'] if P['glare_pos'] is not None else (float(rng.uniform(-.45, .45)), float(rng.uniform(-.45, .45)))
        if jitter is not None: gp = (gp[0] + fr.normal(0, .12), gp[1] + fr.normal(0, .12))
        sg = P['glare_size'] * spx; px, py = cx + gp[0] * spx, cy + gp[1] * spx
        specimg += P['glare'] * np.exp(-(((np.arange(W)[None] - px)**2 + (np.arange(H)[:, None] - py)**2) / (2 * sg * sg))).astype(np.float32)
    img = np.float32(P['exposure']) * img + np.float32(max(.35, P['exposure']) * 1.1) * specimg
    # --- optics
    img = cv2.GaussianBlur(img, (0, 0), .6)
    df, mo = P['defocus'], P['motion']
    if jitter is not None: df = abs(df * (1 + fr.normal(0, .35))); mo = abs(mo * fr.uniform(.2, 1.6))
    if df > .3:
        k = int(math.ceil(df)) * 2 + 3; g = np.mgrid[-(k//2):k//2+1, -(k//2):k//2+1]; ker = np.clip(df + .5 - np.hypot(g[0], g[1]), 0, 1).astype(np.float32); img = cv2.filter2D(img, -1, ker / ker.sum(), borderType=cv2.BORDER_REPLICATE)
    if mo > .5:
        md = math.radians(P['motion_dir'] if P['motion_dir'] is not None and jitter is None else float(fr.uniform(0, 180))); k = int(math.ceil(mo)) | 1; k += 2; ker = np.zeros((k * 4, k * 4), np.float32); c = k * 2 - .5
        cv2.line(ker, (int(round((c - math.cos(md) * mo * 2) * 16)), int(round((c - math.sin(md) * mo * 2) * 16))), (int(round((c + math.cos(md) * mo * 2) * 16)), int(round((c + math.sin(md) * mo * 2) * 16))), 1, 4, cv2.LINE_AA, 4)
        ker = cv2.resize(ker, (k, k), interpolation=cv2.INTER_AREA); img = cv2.filter2D(img, -1, ker / ker.sum(), borderType=cv2.BORDER_REPLICATE)
    # --- sensor: gamma, noise, 8 bit
    if 'g' not in _cache: _cache['g'] = (255 * (np.arange(4801) / 4000.) ** (1 / 1.8)).astype(np.float32)
    img = np.take(_cache['g'], np.clip(img * np.float32(4000), 0, 4800).astype(np.uint16))
    if P['noise'] > 0:
        pool = _noise_pool(); ny, nx = int(fr.integers(0, 400)), int(fr.integers(0, 400)); n = pool[ny:ny+H, nx:nx+W]
        if fr.random() < .5: n = n[:, ::-1]
        img = img + n * (np.float32(P['noise'] * .5) * (1 + np.sqrt(img * np.float32(1 / 128))))
    out = np.clip(img + np.float32(.5), 0, 255).astype(np.uint8)
    if P['jpeg']: out = cv2.imdecode(cv2.imencode('.jpg', out, [cv2.IMWRITE_JPEG_QUALITY, int(P['jpeg'])])[1], 0)
    truth = dict(payload=payload, sym=P['sym'], modules=int(N), module_mm=round(mod, 3), symbol_mm=round(sym_mm, 2), px_per_module=round(mod * f / dist, 3),
                 corners=[[round(float(x), 1), round(float(y), 1)] for x, y in zip(cu, cv_)], seed=int(seed), frame=jitter)
    return out, truth

def selftest():
    for s in ('qrL', 'qrM', 'qrQ', 'qrH', 'dm'):
        for n in (8, 12, 16, 20, 24): print(s, n, symbol(s, payload_for(1, n)).shape[0])
    i1, t = render(scene('mix2', 3), 3); i2, _ = render(scene('mix2', 3), 3); assert (i1 == i2).all(); print('deterministic', t)

def write_frame(out, img, truth):
    """One frame of --stream: "SPFR", then little-endian int32 width, height, seed, frame of the burst or -1, the corners
    in tenths of a pixel, length of the text; the text; the luminance row by row."""
    text = truth['payload'].encode(); corners = [int(round(10 * v)) for p in truth['corners'] for v in p]
    out.write(struct.pack('<4s13i', b'SPFR', img.shape[1], img.shape[0], truth['seed'], -1 if truth['frame'] is None else truth['frame'], *corners, len(text)))
    out.write(text); out.write(np.ascontiguousarray(img)); out.flush()

def main():
    ap = argparse.ArgumentParser(); A = ap.add_argument
    A('--scene', default='mix1'); A('--sym', default='qrM'); A('--seed', type=int, default=0); A('--seeds'); A('--frames', type=int, default=0)
    A('--out', default='frame.png'); A('--outdir'); A('--set', action='append', default=[], help='name=value override'); A('--stream', action='store_true'); A('--labels', action='store_true', help="odd seeds carry a barrel's label")
    A('--only', help='of the seeds I/N: those that leave I when divided by N'); A('--list', action='store_true'); A('--selftest', action='store_true')
    a = ap.parse_args()
    if a.list: print('scenes: nominal mix0 mix1 mix2 mix3'); print(json.dumps(DEFAULT, indent=1)); return
    if a.selftest: return selftest()
    ov = {'sym': a.sym}
    for kv in a.set:
        k, v = kv.split('=', 1); ov[k] = json.loads(v) if v not in ('label', 'wood', 'edge', 'corner', 'blob', 'v', 'h') and not v.startswith(('qr', 'dm')) else v
    man = []
    def emit(seed, path, j=None):
        img, t = render(scene(a.scene, seed, **ov), seed, j); cv2.imwrite(path, img); t['file'] = os.path.basename(path); man.append(t)
    if a.stream:
        lo, hi = map(int, a.seeds.split('-')) if a.seeds else (a.seed, a.seed)
        rest, step = map(int, a.only.split('/')) if a.only else (0, 1)
        for s in (s for s in range(lo, hi + 1) if s % step == rest):
            if a.labels: ov['payload'] = label_for(s) if s % 2 else None
            for j in range(a.frames) if a.frames else (None,): write_frame(sys.stdout.buffer, *render(scene(a.scene, s, **ov), s, j))
    elif a.outdir:
        os.makedirs(a.outdir, exist_ok=True); lo, hi = map(int, a.seeds.split('-'))
        for s in range(lo, hi + 1): emit(s, f'{a.outdir}/{a.scene}_{a.sym}_{s:05d}.png')
        json.dump(man, open(f'{a.outdir}/manifest.json', 'w'), indent=1)
    elif a.frames:
        b, e = os.path.splitext(a.out)
        for j in range(a.frames): emit(a.seed, f'{b}_{j:03d}{e}', j)
        json.dump(man, open(b + '.json', 'w'), indent=1)
    else: emit(a.seed, a.out); print(json.dumps(man[0]))
if __name__ == '__main__': main()
