using Stockwright.Numerics;

namespace Stockwright.Tests.Numerics;

/// <summary>The equations of the ice-bath problem: stock, wall, lid, bath or ice, evaporated mass. <c>IceBathReferenceTests</c> says how it was solved apart from the code.</summary>
/// <param name="HasIce">True while ice holds the bath at 0 C.</param>
internal readonly record struct IceBath(bool HasIce) : IOdeSystem
{
    public int Dimension => 5;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        const double room = 22;
        double bath = HasIce ? 0 : y[3];
        double stockToWall = 60 * (y[0] - y[1]);
        double wallToBath = 45 * (y[1] - bath);
        double stockToLid = 1.5 * (y[0] - y[2]);
        double lidToRoom = (0.5 * (y[2] - room)) + (0.30 * 5.670374419e-8 * 0.0616 * (Math.Pow(y[2] + 273.15, 4) - Math.Pow(room + 273.15, 4)));
        double vapour = 610.94 * Math.Exp(17.625 * y[0] / (y[0] + 243.04));
        double evaporation = 2e-9 * Math.Max(vapour - 1320, 0);
        double heat = wallToBath + (3 * (room - bath));
        dydt[0] = -(stockToWall + stockToLid + (2.4e6 * evaporation)) / 40670;
        dydt[1] = (stockToWall - wallToBath) / 1200;
        dydt[2] = (stockToLid - lidToRoom) / 400;
        dydt[3] = HasIce ? -heat / 333600 : heat / (10.5 * 4200);
        dydt[4] = evaporation;
    }
}
