namespace Ramwright.Presses;

/// <summary>What the two ends of a press are called: crown and bed where it stands, ends where it lies.</summary>
internal static class FrameWords
{
    public static string Crown(PressFrame said) => said.Horizontal == true ? "cylinder end" : "crown";

    public static string Bed(PressFrame said) => said.Horizontal == true ? "far end" : "bed";

    public static string Crown(RigFrame frame) => frame.Horizontal ? "cylinder end" : "crown";

    public static string Bed(RigFrame frame) => frame.Horizontal ? "far end" : "bed";
}
