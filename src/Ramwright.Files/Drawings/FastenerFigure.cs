using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Files.Drawings;

/// <summary>Bolts and pins of a joint seen along their axes: a circle of their own diameter, and its cross.</summary>
internal static class FastenerFigure
{
    private const double CrossPast = 0.8;

    public static IEnumerable<Mark> Of(PlanJoint joint, View view)
    {
        if (Math.Abs(joint.Normal.Dot(view.Toward)) < 0.5)
            yield break;
        string part = joint.Beam.Part + " joint";
        switch (joint.Joint)
        {
            case RigBoltedJoint bolts:
                foreach (Vector at in joint.Places(bolts))
                {
                    foreach (Mark mark in Circle(at, bolts.Thread.D))
                        yield return mark;
                }

                break;
            case RigPinnedJoint pin:
                foreach (Mark mark in Circle(joint.Centre, pin.Diameter))
                    yield return mark;
                break;
        }

        IEnumerable<Mark> Circle(Vector at, double d)
        {
            (double x, double y) = view.On(at);
            double paper = d * view.Scale, arm = paper / 2 + CrossPast;
            yield return new Area(part, new Outline([Loops.Circle(paper)]).Moved(x, y), Pen.Edge, "#ffffff");
            yield return new Line(part, [(x - arm, y), (x + arm, y)], Pen.Thin);
            yield return new Line(part, [(x, y - arm), (x, y + arm)], Pen.Thin);
        }
    }
}
