namespace Stockwright.Physics.Conduction;

/// <summary>
/// What a conduction field is made of: enthalpy per volume against temperature, and conductivity.
/// Implemented by a struct, so that the solver's inner loops carry no virtual call.
/// </summary>
internal interface IConductionMaterial
{
    /// <summary>True when temperature is a straight line in enthalpy: one Newton pass is then exact.</summary>
    bool IsLinear { get; }

    /// <summary>Temperature at an enthalpy, C from J/m3; rising without a jump.</summary>
    double Celsius(double joulesPerCubicMetre);

    /// <summary>Enthalpy at a temperature, J/m3 from C.</summary>
    double JoulesPerCubicMetre(double celsius);

    /// <summary>Slope dT/dH, K m3/J, above zero.</summary>
    double KelvinsPerJoulePerCubicMetre(double joulesPerCubicMetre);

    /// <summary>Conductivity, W/(m K), above zero.</summary>
    double ConductivityWattsPerMetreKelvin(double celsius);
}
