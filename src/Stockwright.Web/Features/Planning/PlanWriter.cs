using System.Globalization;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes requests as forms.</summary>
internal sealed class PlanWriter
{
    private readonly List<KeyValuePair<string, string>> entries = [];
    private readonly UnitSystem units;

    private PlanWriter(UnitSystem units) => this.units = units;

    public static TypedForm Write(PlanRequest request, KitchenSetup kitchen, UnitSystem units)
    {
        PlanWriter writer = new(units);

        // Measures, recipe, pot and day are always said: a link must mean the same for the next reader, tomorrow.
        writer.Put(PlanFields.Units, ReaderUnits.Word(units));
        writer.Put(PlanFields.Recipe, request.Recipe.Id);
        writer.PutPot(request.Pot, kitchen);
        writer.PutLid(request);
        writer.PutHob(request.Hob, kitchen);
        writer.PutGoal(request.Goal);
        writer.PutFill(request, kitchen);
        writer.PutSchedule(request.Schedule);
        writer.Put(PlanFields.Simmer, Measure.Temperature, request.SimmerTemperature?.Kelvins);
        writer.Put(PlanFields.Hours, Measure.Hours, request.SimmerTime?.TotalSeconds);
        if (request.CheckInterval != TimeSpan.FromHours(1))
        {
            writer.Put(PlanFields.Check, Measure.Minutes, request.CheckInterval.TotalSeconds);
        }

        if (request.TopUp != PlanRequest.UsualTopUp(request.Recipe))
        {
            writer.Put(PlanFields.TopUp, WordTable.Of(PlanText.TopUps, request.TopUp));
        }

        writer.PutUnlessDefault(PlanFields.HeatUpLid, PlanText.HeatUpLids, request.HeatsUpCovered ? HeatUpLid.On : HeatUpLid.Off);
        if (request.Pot.Kind == PotKind.SlowCooker)
        {
            writer.PutUnlessDefault(PlanFields.SlowSetting, EquipmentWords.SlowSettings, request.Setting);
        }

        if (request.SimmersInOven)
        {
            writer.Put(PlanFields.InOven, "1");
        }

        if (request.Mirepoix is { } mirepoix)
        {
            writer.Put(PlanFields.Mirepoix, PlanText.MirepoixTimes.First(word => word.Value == mirepoix).Word);
        }

        writer.PutSite(request.Site, kitchen.Site);
        foreach (string ingredient in request.LeftOut.Order(StringComparer.Ordinal))
        {
            writer.Put(PlanFields.Leave + ingredient, "1");
        }

        foreach (string ingredient in request.WithOptional.Order(StringComparer.Ordinal))
        {
            writer.Put(PlanFields.With + ingredient, "1");
        }

        return new TypedForm(writer.entries);
    }

    private void Put(string field, string value) => entries.Add(KeyValuePair.Create(field, value));

    private void PutFill(PlanRequest request, KitchenSetup kitchen)
    {
        (FillWay fill, UnitsNet.Length? length) = FillFields.Write(request.FillTo, request.Pot);
        PutUnlessDefault(PlanFields.Fill, PlanText.Fills, fill);
        Put(PlanFields.FillLength, Measure.PotLength, length?.Meters);
        if (request.Way is { } way)
        {
            Put(PlanFields.Way, WordTable.Of(PlanText.Ways, way));
        }

        // Said as soon as there may be several: the kitchen it is read in later may have others.
        if (request.PotCount != 1 || FillFields.PotsLike(kitchen, request.Pot) != 1)
        {
            Put(PlanFields.Pots, request.PotCount.ToString(CultureInfo.InvariantCulture));
        }

        if (request.HobCount != 1 || FillFields.HobsLike(kitchen, request.Hob) != 1)
        {
            Put(PlanFields.Hobs, request.HobCount.ToString(CultureInfo.InvariantCulture));
        }
    }

    private void Put(string field, Measure measure, double? si)
    {
        if (si is { } number)
        {
            Put(field, KitchenNumber.Write(measure.In(units).FromSi(number)));
        }
    }

    private void PutUnlessDefault<T>(string field, (string Word, T Value)[] words, T value)
        where T : struct, Enum
    {
        if (!EqualityComparer<T>.Default.Equals(value, words[0].Value))
        {
            Put(field, WordTable.Of(words, value));
        }
    }

    private void PutPot(Pot pot, KitchenSetup kitchen)
    {
        if (kitchen.Pots.Any(owned => IsSame(owned, pot)))
        {
            Put(PlanFields.Pot, pot.Id);
            return;
        }

        Put(PlanFields.Pot, PlanFields.Own);
        Put(PlanFields.PotDiameter, Measure.PotLength, pot.BaseDiameter.Meters);
        if (pot.IsTapered)
        {
            Put(PlanFields.PotShape, WordTable.Of(EquipmentWords.Shapes, PotShape.Tapered));
            Put(PlanFields.PotBrimDiameter, Measure.PotLength, pot.BrimDiameter.Meters);
        }

        Put(PlanFields.PotHeight, Measure.PotLength, pot.InnerHeight.Meters);
        PutUnlessDefault(PlanFields.PotMaterial, EquipmentWords.Materials, pot.Material);
        PutUnlessDefault(PlanFields.PotKind, EquipmentWords.PotKinds, pot.Kind);
        Put(PlanFields.PotGauge, Measure.Gauge, pot.GaugePressure?.Pascals);
        Put(PlanFields.PotPower, Measure.Watts, (double?)pot.HeaterPower?.Watts);
        double estimate = Pot.EstimateEmptyMass(pot.BaseDiameter, pot.BrimDiameter, pot.InnerHeight, pot.Material).Kilograms;
        if (!IsClose(estimate, pot.EmptyMass.Kilograms))
        {
            Put(PlanFields.PotMass, Measure.Mass, pot.EmptyMass.Kilograms);
        }
    }

    private void PutLid(PlanRequest request)
    {
        LidPosition usual = PlanRequest.UsualLid(request.Pot, request.Recipe);
        if (request.Lid.Kind == usual.Kind && IsClose(request.Lid.OpenFraction.DecimalFractions, usual.OpenFraction.DecimalFractions))
        {
            return;
        }

        Put(PlanFields.Lid, WordTable.Of(EquipmentWords.Lids, request.Lid.Kind));
        if (request.Lid.Kind == LidKind.Ajar)
        {
            Put(PlanFields.Gap, Measure.Percent, request.Lid.OpenFraction.DecimalFractions);
        }
    }

    private void PutHob(Hob hob, KitchenSetup kitchen)
    {
        if (hob.Kind is HobKind.Crock or HobKind.Jacket)
        {
            // A vessel's own heater is told with the vessel.
            return;
        }

        if (kitchen.Hobs.Any(owned => IsSame(owned, hob)))
        {
            if (!string.Equals(kitchen.Hobs[0].Id, hob.Id, StringComparison.Ordinal))
            {
                Put(PlanFields.Hob, hob.Id);
            }

            return;
        }

        Put(PlanFields.Hob, PlanFields.Own);
        PutUnlessDefault(PlanFields.HobKind, EquipmentWords.HobKinds, hob.Kind);
        Put(PlanFields.HobPower, Measure.Kilowatts, (double)hob.RatedPower.Watts);
        Put(PlanFields.HobEfficiency, Measure.Percent, hob.OwnEfficiency?.DecimalFractions);
    }

    private void PutGoal(PlanGoal goal)
    {
        switch (goal)
        {
            case PlanGoal.MakeVolume { PortionSize: { } size } portions when IsWhole(portions.Yield / size):
                Put(PlanFields.Goal, WordTable.Of(PlanText.Goals, GoalWay.Portions));
                Put(PlanFields.PortionCount, Math.Round(portions.Yield / size).ToString(CultureInfo.InvariantCulture));
                Put(PlanFields.PortionSize, Measure.Portion, size.CubicMeters);
                break;
            case PlanGoal.MakeVolume volume:
                Put(PlanFields.Goal, WordTable.Of(PlanText.Goals, GoalWay.Litres));
                Put(PlanFields.Litres, Measure.Stock, volume.Yield.CubicMeters);
                break;
            case PlanGoal.UseBones bones:
                Put(PlanFields.Goal, WordTable.Of(PlanText.Goals, GoalWay.Bones));
                for (int row = 0; row < bones.Bones.Count; row++)
                {
                    Put(PlanFields.BonesField(row, "cut"), bones.Bones[row].IngredientId);
                    Put(PlanFields.BonesMassField(row, units), Measure.Mass, bones.Bones[row].Mass.Kilograms);
                }

                break;
        }
    }

    private void PutSchedule(PlanSchedule schedule)
    {
        PlanSchedule standing = new();
        if (schedule.ReadyBy is not null)
        {
            Put(PlanFields.When, WordTable.Of(PlanText.Whens, WhenWay.Ready));
        }

        if ((schedule.ReadyBy ?? schedule.StartAt) is { } moment)
        {
            DateTime local = TimeZoneInfo.ConvertTime(moment, schedule.Zone).DateTime;
            Put(PlanFields.Date, local.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            Put(PlanFields.Time, Clock(TimeOnly.FromDateTime(local)));
        }

        if (schedule.WakesAt != standing.WakesAt)
        {
            Put(PlanFields.Wakes, Clock(schedule.WakesAt));
        }

        if (schedule.SleepsAt != standing.SleepsAt)
        {
            Put(PlanFields.Sleeps, Clock(schedule.SleepsAt));
        }

        PutUnlessDefault(PlanFields.Night, PlanText.Nights, schedule.Night);
    }

    private void PutSite(KitchenSite site, KitchenSite kitchen)
    {
        bool samePressure = IsClose(site.MeasuredPressure?.Pascals ?? 0, kitchen.MeasuredPressure?.Pascals ?? 0);
        if (!IsClose(site.Altitude.Meters, kitchen.Altitude.Meters) || (!samePressure && site.MeasuredPressure is null))
        {
            Put(PlanFields.Altitude, Measure.Height, site.Altitude.Meters);
            samePressure = site.MeasuredPressure is null;
        }

        if (!samePressure)
        {
            Put(PlanFields.Pressure, Measure.AirPressure, site.MeasuredPressure?.Pascals);
        }

        if (!IsClose(site.Room.Kelvins, kitchen.Room.Kelvins))
        {
            Put(PlanFields.Room, Measure.Temperature, site.Room.Kelvins);
        }

        if (!IsClose(site.TapWater.Kelvins, kitchen.TapWater.Kelvins))
        {
            Put(PlanFields.Tap, Measure.Temperature, site.TapWater.Kelvins);
        }

        if (site.OwnFilmFactor is { } film && !IsClose(film, kitchen.OwnFilmFactor ?? 0))
        {
            Put(PlanFields.Film, Measure.Number, film);
        }

        if (site.OwnClinging is { } clings && !IsClose(clings.DecimalFractions, kitchen.OwnClinging?.DecimalFractions ?? 0))
        {
            Put(PlanFields.Clings, Measure.Percent, clings.DecimalFractions);
        }
    }

    private static string Clock(TimeOnly time) =>
        time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);

    private static bool IsSame(Pot owned, Pot pot) =>
        string.Equals(owned.Id, pot.Id, StringComparison.Ordinal)
        && owned.Material == pot.Material && owned.Kind == pot.Kind
        && IsClose(owned.BaseDiameter.Meters, pot.BaseDiameter.Meters)
        && IsClose(owned.BrimDiameter.Meters, pot.BrimDiameter.Meters)
        && IsClose(owned.InnerHeight.Meters, pot.InnerHeight.Meters)
        && IsClose(owned.EmptyMass.Kilograms, pot.EmptyMass.Kilograms)
        && IsClose(owned.GaugePressure?.Pascals ?? 0, pot.GaugePressure?.Pascals ?? 0)
        && IsClose((double)(owned.HeaterPower?.Watts ?? 0), (double)(pot.HeaterPower?.Watts ?? 0));

    private static bool IsSame(Hob owned, Hob hob) =>
        string.Equals(owned.Id, hob.Id, StringComparison.Ordinal)
        && owned.Kind == hob.Kind
        && IsClose((double)owned.RatedPower.Watts, (double)hob.RatedPower.Watts)
        && IsClose(owned.OwnEfficiency?.DecimalFractions ?? 0, hob.OwnEfficiency?.DecimalFractions ?? 0);

    private static bool IsClose(double left, double right) => Math.Abs(left - right) <= 1e-9 * Math.Max(Math.Abs(left), Math.Abs(right));

    private static bool IsWhole(double count) => Math.Abs(count - Math.Round(count)) < 1e-6;
}
