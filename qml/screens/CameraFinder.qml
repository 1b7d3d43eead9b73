import Spile.Camera

// The camera's picture, or a film's. Its module is loaded with this file: with the first page that needs it.
CameraView {}
