using Stockwright.Larder;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Allergen reports of a stock: what is listed, what is diluted, what is said of it. The lists themselves stand in AllergenMatrixTests.</summary>
public sealed class AllergenRulesTests
{
    /// <summary>Regulation (EU) 1169/2011 Annex II; Food and Drug Regulations B.01.010.1; US and Australia New Zealand lists from memory.</summary>
    [Theory]
    [InlineData("celery", "celery", null, null, null)]
    [InlineData("celeriac", "celery", null, null, null)]
    [InlineData("fish-frame", "fish", "fish", "fish", "fish")]
    [InlineData("bonito-flakes", "fish", "fish", "fish", "fish")]
    [InlineData("crab-shell", "crustaceans; sulphites (sulphur dioxide)", "crustacean shellfish; sulphites (sulphur dioxide)", "crustaceans; sulphites (sulphur dioxide)", "crustacean; sulphites (sulphur dioxide)")]
    [InlineData("shrimp-shell", "crustaceans; sulphites (sulphur dioxide)", "crustacean shellfish; sulphites (sulphur dioxide)", "crustaceans; sulphites (sulphur dioxide)", "crustacean; sulphites (sulphur dioxide)")]
    [InlineData("egg-white", "eggs", "egg", "eggs", "egg")]
    public void One_ingredient(string id, string? eu, string? us, string? canada, string? australia)
    {
        Assert.Equal(eu, Name(Jurisdiction.EuropeanUnionAndUnitedKingdom, id));
        Assert.Equal(us, Name(Jurisdiction.UnitedStates, id));
        Assert.Equal(canada, Name(Jurisdiction.Canada, id));
        Assert.Equal(australia, Name(Jurisdiction.AustraliaNewZealand, id));
    }

    /// <summary>The same lists: soy sauce brewed with wheat is soy and wheat everywhere.</summary>
    [Theory]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "soybeans", "cereals containing gluten")]
    [InlineData(Jurisdiction.UnitedStates, "soybeans", "wheat")]
    [InlineData(Jurisdiction.Canada, "soybeans", "wheat or other gluten source")]
    [InlineData(Jurisdiction.AustraliaNewZealand, "soy", "wheat, barley, rye or oats")]
    public void Soy_sauce(Jurisdiction place, string soy, string cereal) =>
        Assert.Equal($"{soy}; {cereal}", string.Join("; ", Report(place, Of("soy-sauce", 0.05)).Flags.Select(flag => flag.Name)));

    /// <summary>Molluscs are not on the US list (Federal Food, Drug, and Cosmetic Act s. 201(qq) [from memory]); the EU, Canada and Australia New Zealand list them.</summary>
    [Theory]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, true)]
    [InlineData(Jurisdiction.UnitedStates, false)]
    [InlineData(Jurisdiction.Canada, true)]
    [InlineData(Jurisdiction.AustraliaNewZealand, true)]
    public void Mussels(Jurisdiction place, bool listed)
    {
        Ingredient mussel = StandardLarder.Table.Get("shrimp-shell") with { Id = "mussel", Name = "Mussels", Allergens = ["mollusc"] };
        Assert.Equal(listed, Report(place, new AllergenSource(mussel, Mass.FromKilograms(1))).Flags.Count > 0);
    }

    /// <summary>Annex II point 12: more than 10 mg/kg; US and Codex: 10 or more.</summary>
    [Theory]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, 10.0, false)]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, 10.1, true)]
    [InlineData(Jurisdiction.UnitedStates, 10.0, true)]
    [InlineData(Jurisdiction.UnitedStates, 9.9, false)]
    [InlineData(Jurisdiction.Canada, 10.0, true)]
    [InlineData(Jurisdiction.AustraliaNewZealand, 10.0, true)]
    public void Sulphite_limits(Jurisdiction place, double level, bool counts) => Assert.Equal(counts, AllergenRules.SulphitesCount(place, level));

    /// <summary>
    /// The legal ceilings of wine, mg/L: Delegated Regulation (EU) 2019/934 Annex I part B (white 250, red 200 from 5 g of sugar a litre,
    /// fortified 200 [from memory]); 27 CFR 4.22(b)(1), 350; Food and Drug Regulations B.02.100, 70 free and 350 combined; Standard 4.5.1,
    /// 250, and 300 above 35 g of sugar a litre. Millilitres of wine to a kilogram of stock, on both sides of 10 mg/kg.
    /// </summary>
    [Theory]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "white-wine", 41, "10.3", 39)]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "red-wine", 51, "10.2", 49)]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "port", 51, "10.2", 49)]
    [InlineData(Jurisdiction.UnitedStates, "white-wine", 29, "10.2", 28)]
    [InlineData(Jurisdiction.UnitedStates, "red-wine", 29, "10.2", 28)]
    [InlineData(Jurisdiction.Canada, "white-wine", 24, "10.1", 23)]
    [InlineData(Jurisdiction.AustraliaNewZealand, "white-wine", 41, "10.3", 39)]
    [InlineData(Jurisdiction.AustraliaNewZealand, "sherry", 34, "10.2", 33)]
    public void Wine_is_diluted(Jurisdiction place, string id, double declared, string level, double below)
    {
        AllergenFlag flag = Assert.Single(Report(place, Wine(id, declared)).Flags);
        Assert.Equal("sulphites", flag.Word);
        Assert.Contains($"would bring {level} mg/kg", flag.Note, StringComparison.Ordinal);
        AllergenReport less = Report(place, Wine(id, below));
        Assert.Empty(less.Flags);
        Assert.Contains("Sulphites are not listed for the wine", Assert.Single(less.Remarks), StringComparison.Ordinal);
    }

    /// <summary>30 mL of white wine bring 7.5 mg/kg at 250 mg/L, 12 at the 400 of some sweet wines (Regulation (EU) 2019/934); 20 mL of those bring 8.</summary>
    [Theory]
    [InlineData(30, true)]
    [InlineData(20, false)]
    public void A_sweet_wine_may_have_to_be_declared_where_a_dry_one_need_not(double millilitres, bool said)
    {
        AllergenReport report = Report(Jurisdiction.EuropeanUnionAndUnitedKingdom, Wine("white-wine", millilitres));
        Assert.Empty(report.Flags);
        Assert.Equal(said, Assert.Single(report.Remarks).Contains("As a sweet wine it would bring 12 mg/kg", StringComparison.Ordinal));
    }

    // No law is at hand for what sake or mirin may hold, and a cook's own row may be anything: never diluted away.
    [Theory]
    [InlineData("sake")]
    [InlineData("mirin")]
    [InlineData("my-own-wine")]
    public void What_is_no_wine_of_a_known_kind_is_declared_however_little(string id)
    {
        foreach (AllergenReport report in AllergenRules.Report([Wine(id, 1)], Mass.FromKilograms(1)))
        {
            Assert.Contains("only the label tells", Assert.Single(report.Flags).Note, StringComparison.Ordinal);
        }
    }

    /// <summary>Food Addit Contam B 2014, doi 10.1080/19393210.2013.848943: 76 of 210 samples, up to 1174.1 mg/kg, whole prawns up to four times the edible part.</summary>
    [Fact]
    public void Sulphites_of_prawns_are_declared_everywhere_and_speak_of_prawns()
    {
        IReadOnlyList<AllergenReport> reports = AllergenRules.Report([Of("shrimp-shell", 0.001)], Mass.FromKilograms(1));
        Assert.Equal(4, reports.Count);
        foreach (AllergenReport report in reports)
        {
            AllergenFlag flag = Assert.Single(report.Flags, flag => flag.Word is "sulphites");
            Assert.Contains("Ask for untreated prawns; shells and heads hold the most.", flag.Note, StringComparison.Ordinal);
            Assert.DoesNotContain("ured meat", flag.Note, StringComparison.Ordinal);
        }

        AllergenRemark remark = Assert.Single(AllergenRemarks.Of([Of("shrimp-shell", 0.001)]));
        Assert.Equal((AllergenRemarks.CrustaceanSulphites, "Prawn or shrimp shells"), (remark.Id, Assert.Single(remark.Ingredients)));
        Assert.Contains("Of 210 samples 76 held it", remark.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Prawns_and_wine_each_get_their_word()
    {
        AllergenReport report = AllergenRules.Report([Of("shrimp-shell", 0.3), Wine("white-wine", 10)], Mass.FromKilograms(1))[0];
        string note = report.Flags.Single(flag => flag.Word is "sulphites").Note!;
        Assert.Contains("untreated prawns", note, StringComparison.Ordinal);
        Assert.Contains("would bring 2.5 mg/kg", note, StringComparison.Ordinal);
    }

    // Nitrite, which cures ham, is no sulphite.
    [Fact]
    public void A_ham_bone_has_no_sulphites() => Assert.All(
        AllergenRules.Report([Of("ham-bone", 1)], Mass.FromKilograms(1)), report => Assert.Empty(report.Flags));

    /// <summary>Butter for sweating is milk everywhere: Annex II point 7; FALCPA; B.01.010.1; Schedule 9.</summary>
    [Fact]
    public void Butter_is_milk_in_all_four_places()
    {
        Ingredient butter = StandardLarder.Table.Get("onion") with { Id = "butter", Name = "Butter", Allergens = ["milk"] };
        IReadOnlyList<AllergenReport> reports = AllergenRules.Report([new AllergenSource(butter, Mass.FromGrams(10))], Mass.FromKilograms(1));
        Assert.Equal(["milk", "milk", "milk", "milk"], reports.Select(report => Assert.Single(report.Flags).Name), StringComparer.Ordinal);
    }

    /// <summary>Schweiz Med Wochenschr 1985;115:258: carrot, parsley, anise, fennel and caraway cross-react with celery.</summary>
    [Theory]
    [InlineData("celery carrot onion parsley", "Of celery’s family beside it: carrots and parsley stems. They may set off a celery allergy too: ask the eater.")]
    [InlineData("onion fennel", "Of celery’s family though there is no celery in it: fennel.")]
    [InlineData("onion leek mushroom celery", null)]
    [InlineData("celeriac", null)]
    public void Relatives_of_celery_are_named_with_celery_and_without(string ids, string? words)
    {
        AllergenRemark? remark = AllergenRemarks.Of([.. ids.Split(' ').Select(id => Of(id, 0.1))]).SingleOrDefault();
        Assert.Equal(words is null, remark is null);
        Assert.StartsWith(words ?? "", remark?.Text ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_out_of_the_pot_is_no_relative_in_it() =>
        Assert.Empty(AllergenRemarks.Of([Of("carrot", 0), Of("onion", 1)]));

    /// <summary>Regulation (EU) 579/2012: egg and milk from fining stand on the bottle.</summary>
    [Fact]
    public void Wine_may_hold_egg_or_milk()
    {
        AllergenRemark remark = Assert.Single(AllergenRemarks.Of([Wine("red-wine", 50)]));
        Assert.Equal(AllergenRemarks.WineFining, remark.Id);
        Assert.Contains("declare egg or milk", remark.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_word_of_the_larder_is_known_everywhere()
    {
        foreach (string word in Allergen.Known)
        {
            Ingredient ingredient = StandardLarder.Table.Get("onion") with { Name = "Thing", Allergens = [word] };
            IReadOnlyList<AllergenReport> reports = AllergenRules.Report([new AllergenSource(ingredient, Mass.FromKilograms(1))], Mass.FromKilograms(1));
            Assert.Equal(4, reports.Count);
            AllergenFlag flag = Assert.Single(reports[0].Flags);
            Assert.Equal(["Thing"], flag.Ingredients);
        }
    }

    [Fact]
    public void It_never_promises()
    {
        foreach (AllergenReport report in AllergenRules.Report([Of("onion", 1)], Mass.FromKilograms(1)))
        {
            Assert.Empty(report.Flags);
            Assert.DoesNotContain("free", report.Statement, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("traces", report.Statement, StringComparison.Ordinal);
        }
    }

    private static string? Name(Jurisdiction place, string id) =>
        Report(place, Of(id, 0.1)).Flags is { Count: > 0 } flags ? string.Join("; ", flags.Select(flag => flag.Name)) : null;

    // What the larder has not, or has without the flag, is tried as a row of its id made of white wine.
    private static AllergenSource Wine(string id, double millilitres)
    {
        Ingredient row = StandardLarder.Table.TryFind(id, out Ingredient? wine) && wine.Allergens.Contains("sulphites", StringComparer.Ordinal)
            ? wine
            : StandardLarder.Table.Get("white-wine") with { Id = id };
        return new AllergenSource(row, Volume.FromMilliliters(millilitres) * row.TrueDensity.Value);
    }

    private static AllergenSource Of(string id, double kilograms) => new(StandardLarder.Table.Get(id), Mass.FromKilograms(kilograms));

    private static AllergenReport Report(Jurisdiction place, AllergenSource source) =>
        AllergenRules.Report([source], Mass.FromKilograms(1)).Single(report => report.Place == place);
}
