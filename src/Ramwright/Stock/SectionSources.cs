using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>Where the properties of sections that are not mere geometry come from.</summary>
public static class SectionSources
{
    /// <summary>Shear areas Av.</summary>
    public static readonly Citation ShearArea = new("EN 1993-1-1:2005", "6.2.6(3)");

    /// <summary>Shear area of solid bars: the elastic check of 6.2.6(4), τ = V S/(I t) ≤ fy/√3, solved for V.</summary>
    public static readonly Citation SolidShearArea = new("EN 1993-1-1:2005", "6.2.6(4)");

    /// <summary>Shear coefficients of deflection: rectangle 5/6, round bar 9/10 by shear energy; webs of I, channel and box.</summary>
    public static readonly Citation ShearDeflection =
        new("Timoshenko and Gere, Mechanics of Materials, shear strain energy of beams", "", Standing.FromMemory);

    /// <summary>Shear coefficient of a thick round tube.</summary>
    public static readonly Citation TubeShearDeflection =
        new("Cowper, The shear coefficient in Timoshenko's beam theory, J. Appl. Mech. 33 (1966)", "hollow circle", Standing.FromMemory);

    /// <summary>Choice of the buckling curve.</summary>
    public static readonly Citation Curve = new("EN 1993-1-1:2005", "table 6.2", Standing.FromMemory);

    /// <summary>Torsion of hollow sections: It and Ct.</summary>
    public static readonly Citation HollowTorsion = new("EN 10210-2:2006", "annex on torsion", Standing.FromMemory);

    /// <summary>Torsion of rolled I-sections, with the junctions of web and flanges.</summary>
    public static readonly Citation RolledTorsion = new("EN 10365 section tables, torsion formula of the makers", "", Standing.FromMemory);

    /// <summary>Torsion of channels, with the junctions of web and flanges.</summary>
    public static readonly Citation ChannelTorsion =
        new("El Darwish and Johnston, Torsion of structural shapes, J. Struct. Div. ASCE 91 (1965)", "channels", Standing.FromMemory);

    /// <summary>Torsion of angles and T-sections, with the junction of their two walls.</summary>
    public static readonly Citation AngleAndTeeTorsion =
        new("El Darwish and Johnston, Torsion of structural shapes, J. Struct. Div. ASCE 91 (1965)", "angles and tees", Standing.FromMemory);

    /// <summary>Torsion of a rectangle: Saint-Venant's series.</summary>
    public static readonly Citation RectangleTorsion = new("Timoshenko and Goodier, Theory of Elasticity, 3rd ed.", "art. 109", Standing.FromMemory);

    /// <summary>Torsion of a closed box: Bredt.</summary>
    public static readonly Citation BoxTorsion = Citation.Mechanics("Bredt's formulas for a thin closed box");
}
