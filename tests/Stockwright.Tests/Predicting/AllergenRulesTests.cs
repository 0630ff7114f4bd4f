using Stockwright.Larder;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>The allergen lists: Regulation (EU) 1169/2011 Annex II; US, Canadian and Australia New Zealand lists from memory.</summary>
public sealed class AllergenRulesTests
{
    /// <summary>safety.md 3.6: what each place asks to be declared of what goes in a stock.</summary>
    [Theory]
    [InlineData("celery", "celery", null, null, null)]
    [InlineData("celeriac", "celery", null, null, null)]
    [InlineData("fish-frame", "fish", "fish", "fish", "fish")]
    [InlineData("bonito-flakes", "fish", "fish", "fish", "fish")]
    [InlineData("shrimp-shell", "crustaceans", "crustacean shellfish", "crustaceans", "crustacean")]
    [InlineData("egg-white", "eggs", "egg", "eggs", "egg")]
    public void One_ingredient(string id, string? eu, string? us, string? canada, string? australia)
    {
        Assert.Equal(eu, Name(Jurisdiction.EuropeanUnionAndUnitedKingdom, id));
        Assert.Equal(us, Name(Jurisdiction.UnitedStates, id));
        Assert.Equal(canada, Name(Jurisdiction.Canada, id));
        Assert.Equal(australia, Name(Jurisdiction.AustraliaNewZealand, id));
    }

    /// <summary>safety.md 3.6: soy sauce brewed with wheat is soy and wheat everywhere.</summary>
    [Theory]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "soybeans", "cereals containing gluten")]
    [InlineData(Jurisdiction.UnitedStates, "soybeans", "wheat")]
    [InlineData(Jurisdiction.Canada, "soybeans", "wheat or other gluten source")]
    [InlineData(Jurisdiction.AustraliaNewZealand, "soy", "wheat, barley, rye or oats")]
    public void Soy_sauce(Jurisdiction place, string soy, string cereal) =>
        Assert.Equal($"{soy}; {cereal}", string.Join("; ", Report(place, Of("soy-sauce", 0.05)).Flags.Select(flag => flag.Name)));

    /// <summary>Molluscs are not on the US list (FD&amp;C Act s. 201(qq) [from memory]); the EU, Canada and Australia New Zealand list them.</summary>
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

    /// <summary>Dilution: 200 mg/kg of sulphur dioxide (EU limit for white wine [from memory]) in 62 mL of wine to a litre is 12 mg/kg; in 40 mL, 8.</summary>
    [Fact]
    public void Wine_is_diluted()
    {
        AllergenFlag flag = Assert.Single(Report(Jurisdiction.EuropeanUnionAndUnitedKingdom, Of("white-wine", 0.062)).Flags);
        Assert.Contains("12 mg/kg", flag.Note, StringComparison.Ordinal);
        Assert.EndsWith("point 12", flag.Clause, StringComparison.Ordinal);
        Assert.Empty(Report(Jurisdiction.EuropeanUnionAndUnitedKingdom, Of("white-wine", 0.040)).Flags);
    }

    [Fact]
    public void Cured_bones_are_flagged_however_little() =>
        Assert.Single(Report(Jurisdiction.UnitedStates, Of("ham-bone", 0.001)).Flags);

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

    private static string? Name(Jurisdiction place, string id) => Report(place, Of(id, 0.1)).Flags.SingleOrDefault()?.Name;

    private static AllergenSource Of(string id, double kilograms) => new(StandardLarder.Table.Get(id), Mass.FromKilograms(kilograms));

    private static AllergenReport Report(Jurisdiction place, AllergenSource source) =>
        AllergenRules.Report([source], Mass.FromKilograms(1)).Single(report => report.Place == place);
}
