using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles screws and bolts.</summary>
internal static class ResolveScrews
{
    public static RigScrews Of(
        string? thread, string? grade, double? count, double? engagement, string path, Shelf shelf, Assumptions assume)
    {
        ScrewThread found = ResolveJoint.ThreadNamed(thread ?? throw new ArgumentException($"'{path}.thread' is missing"), shelf, path + ".thread");
        return new RigScrews(found, Class(grade, found, path, shelf, assume), (int)Resolver.Needed(count, path + ".count"), engagement);
    }

    /// <summary>The class of a bolt or rod; the weakest where none is marked.</summary>
    public static PropertyClass Class(string? said, ScrewThread thread, string path, Shelf shelf, Assumptions assume)
    {
        string grade = assume.Or(said, path + ".class", "4.6", "bolts without a marked head are taken as the weakest class");
        if (!shelf.TryClass(grade, thread.D, out PropertyClass? found))
        {
            found = shelf.Classes[0];
            assume.Fault(path + ".class", $"class {grade} is not made in {thread.Name}", "a class that the thread is made in, such as 8.8");
        }

        if (found.Name == "12.9")
            assume.Caution("Bolts of class 12.9 are brittle and outside EN 1993-1-8: they are counted as 10.9. Take 8.8 or 10.9.");
        else if (found.AlphaV is null)
            assume.Caution($"Bolts of {found.Name} are outside EN 1993-1-8: its rules are put to their own strength, no more than that of class 10.9.");
        return found;
    }
}
