using Stockwright.Larder;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>
/// Fourteen words by four places: listed or not, and under which name. EU and UK: Regulation (EU) 1169/2011, Annex II, points 1 to 14.
/// US: Federal Food, Drug, and Cosmetic Act s. 201(qq) with the FASTER Act 2021, sulphites 21 CFR 130.9 [from memory]. Canada: Food and Drug Regulations B.01.010.1,
/// sulphites B.01.010.3. Australia and New Zealand: Standard 1.2.3 s. 4, Schedule 9 s. 3 [from memory].
/// </summary>
public sealed class AllergenMatrixTests
{
    [Theory]
    [InlineData("gluten", "cereals containing gluten", "wheat", "wheat or other gluten source", "wheat, barley, rye or oats")]
    [InlineData("crustacean", "crustaceans", "crustacean shellfish", "crustaceans", "crustacean")]
    [InlineData("egg", "eggs", "egg", "eggs", "egg")]
    [InlineData("fish", "fish", "fish", "fish", "fish")]
    [InlineData("peanut", "peanuts", "peanuts", "peanuts", "peanut")]
    [InlineData("soy", "soybeans", "soybeans", "soybeans", "soy")]
    [InlineData("milk", "milk", "milk", "milk", "milk")]
    [InlineData("nuts", "nuts", "tree nuts", "tree nuts", "tree nuts")]
    [InlineData("celery", "celery", null, null, null)]
    [InlineData("mustard", "mustard", null, "mustard", null)]
    [InlineData("sesame", "sesame seeds", "sesame", "sesame", "sesame")]
    [InlineData("sulphites", "sulphites (sulphur dioxide)", "sulphites (sulphur dioxide)", "sulphites (sulphur dioxide)", "sulphites (sulphur dioxide)")]
    [InlineData("lupin", "lupin", null, null, "lupin")]
    [InlineData("mollusc", "molluscs", null, "molluscs", "mollusc")]
    public void Word_by_place(string word, string? eu, string? us, string? canada, string? australia)
    {
        Ingredient thing = StandardLarder.Table.Get("onion") with { Id = "thing", Name = "Thing", Allergens = [word] };
        IReadOnlyList<AllergenReport> reports = AllergenRules.Report([new AllergenSource(thing, Mass.FromKilograms(1))], Mass.FromKilograms(1));
        Assert.Equal(
            [
                (Jurisdiction.EuropeanUnionAndUnitedKingdom, eu),
                (Jurisdiction.UnitedStates, us),
                (Jurisdiction.Canada, canada),
                (Jurisdiction.AustraliaNewZealand, australia),
            ],
            reports.Select(report => (report.Place, report.Flags.SingleOrDefault()?.Name)));
    }

    [Fact]
    public void All_fourteen_words_are_tried() => Assert.Equal(14, Allergen.Known.Count);

    /// <summary>Federal Food, Drug, and Cosmetic Act s. 201(qq) [from memory]; Canadian Food Inspection Agency, how to label allergens: the common name of the crustacean or shellfish; of fish [from memory].</summary>
    [Theory]
    [InlineData(Jurisdiction.UnitedStates, "fish", "Name the species.")]
    [InlineData(Jurisdiction.UnitedStates, "crustacean", "Name the kind: crab, lobster, shrimp.")]
    [InlineData(Jurisdiction.Canada, "fish", "Name the species.")]
    [InlineData(Jurisdiction.Canada, "crustacean", "Name the species: crab, lobster, shrimp.")]
    [InlineData(Jurisdiction.Canada, "mollusc", "Name the species: mussel, oyster, scallop.")]
    [InlineData(Jurisdiction.EuropeanUnionAndUnitedKingdom, "fish", null)]
    [InlineData(Jurisdiction.AustraliaNewZealand, "fish", null)]
    public void Where_the_species_must_be_named(Jurisdiction place, string word, string? note)
    {
        Ingredient thing = StandardLarder.Table.Get("onion") with { Allergens = [word] };
        AllergenReport report = AllergenRules.Report([new AllergenSource(thing, Mass.FromKilograms(1))], Mass.FromKilograms(1)).Single(row => row.Place == place);
        Assert.Equal(note, Assert.Single(report.Flags).Note);
    }
}
