namespace Stockwright.Physics;

/// <summary>Which equations stand for the water in a food.</summary>
internal enum FoodWater
{
    /// <summary>IAPWS from 0 °C up, Choi and Okos below; the most accurate and the default.</summary>
    Iapws,

    /// <summary>Choi and Okos 1986 throughout, specific heat constant 4176.2 J/(kg K) above 0 °C and 4081.7 below, as first printed.</summary>
    ChoiOkos,

    /// <summary>
    /// Choi and Okos with 4128.9 J/(kg K) for both, as the ASHRAE Refrigeration handbook prints it [from memory];
    /// about 1.2 % low above 0 °C, kept only to compare with tables made from it.
    /// </summary>
    ChoiOkosAshrae,
}
