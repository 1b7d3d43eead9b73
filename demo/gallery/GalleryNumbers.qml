import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Readings"
    subtitle: "Rum 3"
    backShown: true

    Stepper {
        width: parent.width
        label: "Gravity, at 20 °C"
        readout: "1.0245"
        smallStep: "0.001"
        bigStep: "0.010"
    }
    Stepper {
        width: parent.width
        label: "Temperature"
        readout: "12.5"
        unit: "°C"
        smallStep: "0.5"
        bigStep: "5"
        canMore: false
        error: "A cellar of more than 40 °C is not believed."
    }
    Stepper {
        width: parent.width
        label: "pH"
        empty: true
        smallStep: "0.01"
        bigStep: "0.1"
    }
}
