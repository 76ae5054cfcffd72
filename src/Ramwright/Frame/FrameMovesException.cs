using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>The frame, or part of it, can move without anything resisting: it is not held, or a joint too many is let go.</summary>
public sealed class FrameMovesException : Exception
{
    /// <summary>The node that moves most; of several that turn together, the one nearest the axis.</summary>
    public Node? Node { get; }
    /// <summary>Its number; −1 if not known.</summary>
    public int NodeNumber { get; } = -1;
    /// <summary>How it moves, in words: <c>can turn freely about the vertical</c>.</summary>
    public string Movement { get; } = "can move freely";
    /// <summary>How every node moves together, displacement in m and rotation in rad, to any scale.</summary>
    public IReadOnlyList<(Vector Displacement, Vector Rotation)> Mode { get; } = [];

    /// <summary>With a message alone.</summary>
    public FrameMovesException() : this("The frame can move freely.") { }

    /// <summary>With a message alone.</summary>
    public FrameMovesException(string message) : base(message) { }

    /// <summary>With a message and what led to it.</summary>
    public FrameMovesException(string message, Exception inner) : base(message, inner) { }

    internal FrameMovesException(
        Node node, int number, string movement, int others, IReadOnlyList<(Vector, Vector)> mode)
        : base(Words(node, number, movement, others))
    {
        (Node, NodeNumber, Movement, Mode) = (node, number, movement, mode);
    }

    private static string Words(Node node, int number, string movement, int others)
    {
        string company = others switch
        {
            0 => "",
            1 => " and another node moves with it",
            _ => $" and {others} other nodes move with it",
        };
        return $"Node {number} ({node.Name}) {movement}{company}: nothing resists it. Support it, or make a joint hold.";
    }
}
