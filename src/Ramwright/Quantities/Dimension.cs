namespace Ramwright.Quantities;

/// <summary>What kind of thing a number measures. It fixes the SI unit the number is held in.</summary>
public enum Dimension
{
    /// <summary>A plain number.</summary>
    Number,
    /// <summary>A share of one, held as a fraction, written in per cent.</summary>
    Ratio,
    /// <summary>A count of whole things.</summary>
    Count,
    /// <summary>m.</summary>
    Length,
    /// <summary>m².</summary>
    Area,
    /// <summary>m³, of oil or air as well as the section modulus of a beam.</summary>
    Volume,
    /// <summary>m³, written as a section modulus.</summary>
    SectionModulus,
    /// <summary>m⁴.</summary>
    SecondMoment,
    /// <summary>m⁶.</summary>
    WarpingConstant,
    /// <summary>rad.</summary>
    Angle,
    /// <summary>Metre of rise per metre of run.</summary>
    Slope,
    /// <summary>kg.</summary>
    Mass,
    /// <summary>kg/m.</summary>
    MassPerLength,
    /// <summary>kg/m³.</summary>
    Density,
    /// <summary>s.</summary>
    Time,
    /// <summary>m/s.</summary>
    Speed,
    /// <summary>N.</summary>
    Force,
    /// <summary>N/m.</summary>
    ForcePerLength,
    /// <summary>N·m.</summary>
    Moment,
    /// <summary>N/m, written as the stiffness of a frame or spring.</summary>
    Stiffness,
    /// <summary>N·m/rad.</summary>
    RotationalStiffness,
    /// <summary>Pa above the atmosphere.</summary>
    Pressure,
    /// <summary>Pa.</summary>
    Stress,
    /// <summary>m³/s of oil.</summary>
    Flow,
    /// <summary>m³/s of air, measured as free air at the intake.</summary>
    FreeAir,
    /// <summary>m³ swept in one turn of a pump.</summary>
    Displacement,
    /// <summary>W.</summary>
    Power,
    /// <summary>J.</summary>
    Energy,
    /// <summary>K above 0 °C.</summary>
    Temperature,
    /// <summary>Turns per second.</summary>
    RotationalSpeed,
    /// <summary>Strokes per second.</summary>
    Cadence,
    /// <summary>m²/s.</summary>
    KinematicViscosity,
    /// <summary>Pa·s.</summary>
    DynamicViscosity,
}
