import Spile.Components

// What is wrong with the camera, in words, and what can be done.
Banner {
    id: banner

    required property string problem // as FrameSource has it
    property string otherWays // what to do instead

    visible: banner.problem.length > 0
    kind: Banner.Note
    text: qsTr("%1 %2").arg(banner.said(banner.problem)).arg(banner.otherWays)

    function said(problem: string): string {
        switch (problem) {
        case "absent":
            return qsTr("There is no camera that this app can use.")
        case "denied":
            return qsTr("This app may not use the camera. You can allow it in the settings of the phone.")
        case "unreadable":
            return qsTr("The camera gives pictures that this app cannot read.")
        default:
            return qsTr("The camera gives no picture. Another app may be using it.")
        }
    }
}
