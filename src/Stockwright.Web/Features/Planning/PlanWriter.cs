using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

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
        writer.Say(PlanFields.Units, ReaderUnits.Word(units));
        writer.Say(PlanFields.Recipe.Name, request.Recipe.Id);
        writer.PutPot(request.Pot, kitchen);
        writer.PutLid(request);
        writer.PutHob(request.Hob, kitchen);
        writer.PutGoal(request.Goal);
        (FillWay fill, Length? length) = FillFields.Write(request.FillTo, request.Pot);
        writer.PutUnlessUsual(PlanFields.Fill, fill);
        writer.Put(PlanFields.FillLength, length);
        writer.PutMoment(request.Schedule);
        writer.entries.AddRange(PlanFields.OfRequest.Write(request, PlanQuery.Usual(request.Recipe, request.Larder, kitchen, request.Pot, request.Hob), units));
        foreach (string ingredient in request.LeftOut.Order(StringComparer.Ordinal))
        {
            writer.Say(PlanFields.Leave + ingredient, "1");
        }

        foreach (string ingredient in request.WithOptional.Order(StringComparer.Ordinal))
        {
            writer.Say(PlanFields.With + ingredient, "1");
        }

        return new TypedForm(writer.entries);
    }

    private void Say(string field, string value) => entries.Add(KeyValuePair.Create(field, value));

    private void Put<T>(FieldRow<T> row, T? value)
        where T : struct => row.Put(entries, value, units);

    private void PutUnlessUsual<T>(WordsRow<T> row, T value)
        where T : struct => row.Put(entries, EqualityComparer<T>.Default.Equals(value, row.Usual) ? null : value, units);

    private void PutPot(Pot pot, KitchenSetup kitchen)
    {
        if (kitchen.Pots.Any(owned => IsSame(owned, pot)))
        {
            Say(EquipmentFields.Pot.Name, pot.Id);
            return;
        }

        Say(EquipmentFields.Pot.Name, EquipmentFields.Own);
        Put(EquipmentFields.PotDiameter, pot.BaseDiameter);
        PutUnlessUsual(EquipmentFields.PotShape, pot.IsTapered ? PotShape.Tapered : PotShape.Straight);
        Put(EquipmentFields.PotBrimDiameter, pot.IsTapered ? pot.BrimDiameter : null);
        Put(EquipmentFields.PotHeight, pot.InnerHeight);
        PutUnlessUsual(EquipmentFields.PotMaterial, pot.Material);
        PutUnlessUsual(EquipmentFields.PotKind, pot.Kind);
        Put(EquipmentFields.PotGauge, pot.GaugePressure);
        Put(EquipmentFields.PotPower, pot.HeaterPower);
        Mass estimate = Pot.EstimateEmptyMass(pot.BaseDiameter, pot.BrimDiameter, pot.InnerHeight, pot.Material);
        Put(EquipmentFields.PotMass, EquipmentFields.PotMass.IsSame(estimate, pot.EmptyMass) ? null : pot.EmptyMass);
    }

    private void PutLid(PlanRequest request)
    {
        LidPosition usual = PlanRequest.UsualLid(request.Pot, request.Recipe);
        if (request.Lid.Kind == usual.Kind && EquipmentFields.Gap.IsSame(request.Lid.OpenFraction, usual.OpenFraction))
        {
            return;
        }

        Put(EquipmentFields.Lid, request.Lid.Kind);
        Put(EquipmentFields.Gap, request.Lid.Kind == LidKind.Ajar ? request.Lid.OpenFraction : null);
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
                Say(EquipmentFields.Hob.Name, hob.Id);
            }

            return;
        }

        Say(EquipmentFields.Hob.Name, EquipmentFields.Own);
        PutUnlessUsual(EquipmentFields.HobKind, hob.Kind);
        Put(EquipmentFields.HobPower, hob.RatedPower);
        Put(EquipmentFields.HobEfficiency, hob.OwnEfficiency);
    }

    private void PutGoal(PlanGoal goal)
    {
        switch (goal)
        {
            case PlanGoal.MakeVolume { PortionSize: { } size } portions when IsWhole(portions.Yield / size):
                Put(PlanFields.Goal, GoalWay.Portions);
                Put(PlanFields.PortionCount, (int)Math.Round(portions.Yield / size));
                Put(PlanFields.PortionSize, size);
                break;
            case PlanGoal.MakeVolume volume:
                Put(PlanFields.Goal, GoalWay.Litres);
                Put(PlanFields.Litres, volume.Yield);
                break;
            case PlanGoal.UseBones bones:
                Put(PlanFields.Goal, GoalWay.Bones);
                for (int row = 0; row < bones.Bones.Count; row++)
                {
                    RowFields.Put(entries, RowFields.Bones, row, bones.Bones[row].IngredientId, bones.Bones[row].Mass, units);
                }

                break;
        }
    }

    private void PutMoment(PlanSchedule schedule)
    {
        PutUnlessUsual(PlanFields.When, schedule.ReadyBy is null ? WhenWay.Start : WhenWay.Ready);
        if ((schedule.ReadyBy ?? schedule.StartAt) is { } moment)
        {
            DateTime local = TimeZoneInfo.ConvertTime(moment, schedule.Zone).DateTime;
            Put(PlanFields.Date, DateOnly.FromDateTime(local));
            Put(PlanFields.Time, TimeOnly.FromDateTime(local));
        }
    }

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
