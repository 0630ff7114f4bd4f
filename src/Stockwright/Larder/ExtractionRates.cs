namespace Stockwright.Larder;

/// <summary>How temperature, acid and piece size move the rates (equations B.1 to B.4 in docs/equations-body.md).</summary>
internal static class ExtractionRates
{
    /// <summary>Temperature the rates of the cuts are stated at, 98 °C, K.</summary>
    public const double ReferenceKelvins = 371.15;

    /// <summary>Molar gas constant, J/(mol K) (CODATA 2018, exact).</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>Rate of juices, minerals and meat's nitrogenous matter at 98 °C, per hour (estimate).</summary>
    public const double ExtractivesPerHour = 0.6;

    /// <summary>Rate of a vegetable's sugars and minerals at 98 °C, per hour: about 60 % in the first (estimate, 50 to 70 %).</summary>
    public const double VegetablesPerHour = 0.9;

    /// <summary>Fat comes free faster than the juices, so that 95 % of the end figure is there after three hours (estimate).</summary>
    public const double FatOverExtractives = 1.0 / ExtractivesPerHour;

    /// <summary>Share of the collagen's activation energy that moves juices, sugars and fat (estimate).</summary>
    public const double WeakShare = 0.3;

    private const double NeutralPh = 6;
    private const double AcidSlope = 0.15;
    private const double MostAcid = 1.5;
    private const double LeastPiece = 0.5;
    private const double MostPiece = 2.5;

    /// <summary>B.1 and B.2: rate over that at 98 °C.</summary>
    public static double Arrhenius(double celsius, double activationJoulesPerMole) =>
        Math.Exp(-activationJoulesPerMole / GasConstant * ((1 / (celsius + 273.15)) - (1 / ReferenceKelvins)));

    /// <summary>B.3: acid speeds it up by 15 % per unit of pH below 6, one and a half times at most (estimate).</summary>
    public static double Acid(double ph) => Math.Min(MostAcid, 1 + (AcidSlope * Math.Max(0, NeutralPh - ph)));

    /// <summary>B.4: small pieces give up their mineralised collagen faster, as the root of the size; the law is held to a half and two and a half times.</summary>
    public static double Piece(double metres, double referenceMetres) =>
        Math.Clamp(Math.Sqrt(referenceMetres / metres), LeastPiece, MostPiece);
}
