using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Strength;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Strength;

/// <summary>Reads a sum of the strength page and works it out; what is wrong is gathered by the reader, at its field.</summary>
/// <param name="reader">The form.</param>
/// <param name="kitchen">Pans and hobs to choose from, and the air they stand in.</param>
internal sealed class StrengthService(FieldReader reader, KitchenSetup kitchen)
{
    private const string MissingStock = "How much stock is there?";

    private UnitSystem Units => reader.Units;

    /// <summary>Works out the sum the form asks for; null when none is asked or something has to be put right.</summary>
    public StrengthReply? Answer() => reader.Form[StrengthFields.Way].Trim() switch
    {
        StrengthFields.Reduce => Reduce(),
        StrengthFields.Dilute => Dilute(),
        StrengthFields.Glace => Glace(),
        StrengthFields.Blend => Blend(),
        StrengthFields.Powder => Powder(),
        StrengthFields.Reading => Reading(),
        _ => null,
    };

    private StrengthReply? Reduce()
    {
        StockAmount? stock = Stock(StrengthFields.ReduceVolume, StrengthFields.ReduceGelatin, StrengthFields.ReduceSalt);
        Volume? to = StrengthFields.ReduceTo.Read(reader);
        Ratio? target = StrengthFields.ReduceTarget.Read(reader);
        bool byVolume = Has(StrengthFields.ReduceTo);
        if (byVolume == Has(StrengthFields.ReduceTarget))
        {
            reader.Report(StrengthFields.ReduceTo.Name, byVolume
                ? "Give either the volume or the strength to boil down to, not both."
                : "Say what to boil it down to: a volume, or a strength below.");
            return null;
        }

        if (stock is null || (to is null && target is null))
        {
            return null;
        }

        StrengthAnswer<ReducedStock> answer = to is { } volume
            ? Reduction.ToVolume(stock, volume)
            : Reduction.ToStrength(stock, target!.Value);
        if (Told(answer, field => field switch
            {
                "to" => StrengthFields.ReduceTo,
                "target" => StrengthFields.ReduceTarget,
                _ => stock.Gelatin > Ratio.Zero ? StrengthFields.ReduceVolume : StrengthFields.ReduceGelatin,
            }) is not { } reduced)
        {
            return null;
        }

        List<ReplyRow> rows = [new("Left", KitchenFormat.Text(reduced.After.Volume, Units), $"of {KitchenFormat.Text(stock.Volume, Units)}")];
        AddStrength(rows, reduced.After, $"{BodyText.Number(reduced.Factor)} times what it was");
        bool timed = Has(StrengthFields.ReducePan);
        if (timed)
        {
            if (Time(reduced.Lost, stock.Volume) is not { } time)
            {
                return null;
            }

            rows.Insert(0, new ReplyRow("Takes", KitchenFormat.Text(time.Time.Central), $"likely {KitchenFormat.Band(time.Time)}, {(time.IsAtBoil ? "at the boil" : $"at {KitchenFormat.Text(time.Temperature, Units)}")}; {Rate(time.Rate)} goes off"));
        }

        return new StrengthReply(
            $"Boil off {KitchenFormat.Text(Volume.FromLiters(reduced.Lost.Kilograms), Units)}",
            rows,
            timed
                ? "The time counts from when it is hot. Weigh or measure as it nears; the last of it goes fast, and catches."
                : "Water goes, gelatin and salt stay. Name a pan to hear how long it takes.");
    }

    private ReductionTimeEstimate? Time(Mass lost, Volume volume)
    {
        Pot? pan = Of(StrengthFields.ReducePan, kitchen.Pots, pot => pot.Id, "pan");
        Hob? hob = Has(StrengthFields.ReduceHob) ? Of(StrengthFields.ReduceHob, kitchen.Hobs, each => each.Id, "hob") : kitchen.Hobs.Count > 0 ? kitchen.Hobs[0] : null;
        Ratio setting = StrengthFields.ReduceSetting.ReadOrBlank(reader);
        Temperature? simmer = StrengthFields.ReduceSimmer.Read(reader);
        if (hob is null && !Has(StrengthFields.ReduceHob))
        {
            reader.Report(StrengthFields.ReduceHob.Name, "This kitchen has no hob yet; add one to hear how long it takes.");
        }

        return reader.Problems.Count > 0 || pan is null || hob is null
            ? null
            : Told(
                ReductionTime.Estimate(lost, volume, pan, hob, kitchen.Site, setting, simmer),
                field => field switch
                {
                    "pan" => StrengthFields.ReducePan,
                    "setting" => StrengthFields.ReduceSetting,
                    "simmer" => StrengthFields.ReduceSimmer,
                    _ => StrengthFields.ReduceTo,
                });
    }

    private StrengthReply? Dilute()
    {
        StockAmount? stock = Stock(StrengthFields.DiluteVolume, StrengthFields.DiluteGelatin, StrengthFields.DiluteSalt, "How strong is it?");
        Ratio? target = StrengthFields.DiluteTarget.Read(reader, "How strong should it be?");
        return stock is null || target is null
            ? null
            : LetDown(stock, target.Value, field => field is "target" ? StrengthFields.DiluteTarget : StrengthFields.DiluteGelatin);
    }

    private StrengthReply? Glace()
    {
        Volume? volume = StrengthFields.GlaceVolume.Read(reader, "How much glace do you have?");
        Ratio gelatin = StrengthFields.GlaceGelatin.ReadOrBlank(reader);
        Ratio target = StrengthFields.GlaceTarget.ReadOrBlank(reader);
        return reader.Problems.Count > 0 || volume is null
            ? null
            : LetDown(
                new StockAmount(volume.Value, gelatin),
                target,
                field => field is "target" ? StrengthFields.GlaceTarget : StrengthFields.GlaceGelatin);
    }

    private StrengthReply? LetDown(StockAmount stock, Ratio target, Func<string, FieldRow> place)
    {
        if (Told(Dilution.ToStrength(stock, target), place) is not { } diluted)
        {
            return null;
        }

        List<ReplyRow> rows = [new("Makes", KitchenFormat.Text(diluted.After.Volume, Units), $"{BodyText.Number(diluted.PartsWater)} parts of water to one, by weight")];
        AddStrength(rows, diluted.After, "");
        return new StrengthReply($"Add {KitchenFormat.Text(diluted.Water, Units)} of hot water", rows, "Measured cold. Stir it in hot, or the gelatin stays in lumps.");
    }

    private StrengthReply? Blend()
    {
        Ratio? one = StrengthFields.BlendOne.Read(reader, "How strong is the one?");
        Ratio? other = StrengthFields.BlendOther.Read(reader, "How strong is the other?");
        Ratio? target = StrengthFields.BlendTarget.Read(reader, "How strong should the blend be?");
        Volume? total = StrengthFields.BlendTotal.Read(reader, "How much do you want?");
        if (one is null || other is null || target is null || total is null)
        {
            return null;
        }

        StrengthAnswer<BlendedStock> answer = Blending.ToStrength(new BlendPart(one.Value), new BlendPart(other.Value), target.Value, total.Value);
        if (Told(answer, field => field is "total" ? StrengthFields.BlendTotal : field is "stock" ? StrengthFields.BlendOne : StrengthFields.BlendTarget) is not { } blend)
        {
            return null;
        }

        return new StrengthReply(
            $"{KitchenFormat.Text(blend.Strong, Units)} of the stronger, {KitchenFormat.Text(blend.Weak, Units)} of the weaker",
            [
                new("Parts", $"{BodyText.Number(blend.PartsStrong.Percent, "0.##")} to {BodyText.Number(blend.PartsWeak.Percent, "0.##")}", "stronger to weaker, by weight"),
                new("Share of the stronger", KitchenFormat.Text(blend.ShareStrong)),
            ],
            "Both melted, and their gelatin taken to be equally good.");
    }

    private StrengthReply? Powder()
    {
        Volume? volume = StrengthFields.PowderVolume.Read(reader, MissingStock);
        Ratio now = StrengthFields.PowderNow.ReadOrBlank(reader);
        BodyClass? wanted = StrengthFields.PowderTarget.ReadOrUsual(reader);
        double bloom = StrengthFields.PowderBloom.ReadOrBlank(reader);
        if (reader.Problems.Count > 0 || volume is null || wanted is not { } body)
        {
            return null;
        }

        StrengthAnswer<TopUpAdvice> answer = GelatinTopUp.ToClass(volume.Value, now, body, Mass.FromGrams(bloom));
        return Told(answer, field => field is "bloom" ? StrengthFields.PowderBloom : field is "stock" ? StrengthFields.PowderVolume : StrengthFields.PowderTarget) is not { } advice
            ? null
            : new StrengthReply(
                $"Stir in {KitchenFormat.Text(advice.Powder, Units)} of powder gelatin",
                [new(BodyText.Head(body), "from " + KitchenFormat.Text(advice.Needed), BodyClasses.Look(body))],
                "Soak it in cold water, then melt it in hot stock; it must not boil. Where each word for body begins is our estimate.");
    }

    private StrengthReply? Reading()
    {
        double? brix = StrengthFields.ReadingBrix.Read(reader, "What does it read?");
        ReadingKind? kind = StrengthFields.ReadingKindField.ReadOrUsual(reader);
        Ratio salt = StrengthFields.ReadingSalt.ReadOrBlank(reader);
        double water = StrengthFields.ReadingWater.ReadOrBlank(reader);
        double scale = StrengthFields.ReadingScale.ReadOrBlank(reader);
        if (reader.Problems.Count > 0 || brix is null || kind is not { } read)
        {
            return null;
        }

        StrengthAnswer<RefractometerEstimate> answer = Refractometer.Estimate(brix.Value, read, salt, water, scale);
        if (Told(answer, field => field is "salt" ? StrengthFields.ReadingSalt : StrengthFields.ReadingBrix) is not { } estimate)
        {
            return null;
        }

        List<ReplyRow> rows =
        [
            new("Gelatin", Share(estimate.Gelatin), EvidenceText.Of(estimate.Gelatin.Provenance) + ": " + estimate.Gelatin.Source),
            new("All that is dissolved", Share(estimate.Solids), "without the salt"),
        ];
        if (estimate.Gelatin.Value > Ratio.Zero)
        {
            BodyClass low = BodyClasses.Of(estimate.Gelatin.Low.Percent);
            BodyClass high = BodyClasses.Of(estimate.Gelatin.High.Percent);
            rows.Add(new("Body at best", low == high ? BodyClasses.Name(high) : $"{BodyClasses.Name(low)} to {BodyClasses.Name(high)}", "long heat wears the gelatin down, so it may be softer"));
        }

        return new StrengthReply(
            estimate.Gelatin.Value > Ratio.Zero ? $"About {KitchenFormat.Text(estimate.Gelatin.Value)} gelatin" : "No gelatin: plants have none",
            rows,
            estimate.DiluteFirst
                ? "That is so strong that it reads badly: stir one part of hot stock into two of hot water and read that."
                : "Read at 20 °C (68 °F), defatted, before salt.");
    }

    private StockAmount? Stock(NumberRow<Volume> volumeField, NumberRow<Ratio> gelatinField, NumberRow<Ratio> saltField, string? missingGelatin = null)
    {
        Volume? volume = volumeField.Read(reader, MissingStock);
        Ratio? gelatin = gelatinField.Read(reader, missingGelatin);
        Ratio salt = saltField.ReadOrBlank(reader);
        return reader.Problems.Count > 0 || volume is null ? null : new StockAmount(volume.Value, gelatin ?? Ratio.Zero, salt);
    }

    private bool Has(FieldRow field) => reader.Form.Has(field.Name);

    private T? Of<T>(FieldRow field, IReadOnlyList<T> things, Func<T, string> id, string what)
        where T : class
    {
        string typed = reader.Form[field.Name].Trim();
        T? found = things.FirstOrDefault(thing => string.Equals(id(thing), typed, StringComparison.Ordinal));
        if (found is null)
        {
            reader.Report(field.Name, $"This kitchen has no {what} called {KitchenNumber.Quote(typed)}. Choose one from the list.");
        }

        return found;
    }

    private T? Told<T>(StrengthAnswer<T> answer, Func<string, FieldRow> place)
        where T : class
    {
        if (answer.Problem is { } problem)
        {
            reader.Report(place(problem.Field).Name, problem.Message);
        }

        return answer.Value;
    }

    private static void AddStrength(List<ReplyRow> rows, StockAmount stock, string note)
    {
        if (stock.Gelatin > Ratio.Zero)
        {
            rows.Add(new ReplyRow("Gelatin then", KitchenFormat.Text(stock.Gelatin), note));
            rows.Add(new ReplyRow("Body at best", BodyClasses.Name(BodyClasses.Of(stock.Gelatin.Percent)), BodyClasses.Look(BodyClasses.Of(stock.Gelatin.Percent))));
        }

        if (stock.Salt > Ratio.Zero)
        {
            rows.Add(new ReplyRow("Salt then", KitchenFormat.Text(stock.Salt), stock.Salt.Percent > 1.5 ? "saltier than most sauces" : ""));
        }
    }

    private static string Share(Stated<Ratio> stated) => stated.High > stated.Low
        ? $"{KitchenFormat.Text(stated.Value)}, likely {KitchenFormat.Band(stated.Band)}"
        : KitchenFormat.Text(stated.Value);

    private string Rate(MassFlow flow) => KitchenFormat.Text(VolumeFlow.FromLitersPerHour(flow.KilogramsPerSecond * 3600), Units);
}
