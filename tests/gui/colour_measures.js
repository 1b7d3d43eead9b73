.pragma library

// Measures of colours as QML gives them: r, g and b from 0 to 1, sRGB.

// Shape [r, g, b] of linear light. Source: IEC 61966-2-1 (sRGB).
function linear(colour) {
    return [colour.r, colour.g, colour.b].map(v => v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4))
}

// Source: WCAG 2.2, "relative luminance".
function luminance(colour) {
    const [r, g, b] = linear(colour)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

// From 1 to 21. Source: WCAG 2.2, "contrast ratio".
function contrast(one, other) {
    const a = luminance(one)
    const b = luminance(other)
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)
}

function times(matrix, vector) {
    return matrix.map(row => row[0] * vector[0] + row[1] * vector[1] + row[2] * vector[2])
}

// What an eye of each kind sees, on linear light. Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
// Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Trans. Vis. Comput. Graph. 15 (2009),
// 1291-1298, severity 1.0.
const eyes = {
    normal: [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
    protan: [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    deutan: [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    tritan: [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]]
}

// Source: B. Ottosson, "A perceptual color space for image processing" (2020), matrices of 2021-01-25.
function okLab(rgb) {
    const cones = times([[0.4122214708, 0.5363325363, 0.0514459929],
                         [0.2119034982, 0.6806995451, 0.1073969566],
                         [0.0883024619, 0.2817188376, 0.6299787005]], rgb)
    return times([[0.2104542553, 0.7936177850, -0.0040720468],
                  [1.9779984951, -2.4285922050, 0.4505937099],
                  [0.0259040371, 0.7827717662, -0.8086757660]], cones.map(Math.cbrt))
}

// Distance in OKLab between what the eye `eye` (a key of `eyes`) sees of two colours; black to white is 1.
function distance(one, other, eye) {
    const seen = [one, other].map(colour => {
        const light = times(eyes[eye], linear(colour))
        return okLab(light.map(v => Math.min(1, Math.max(0, v)))) // a screen shows no more
    })
    return Math.hypot(seen[0][0] - seen[1][0], seen[0][1] - seen[1][1], seen[0][2] - seen[1][2])
}
