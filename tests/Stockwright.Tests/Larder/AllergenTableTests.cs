using Stockwright.Larder;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>
/// The allergens of every row, both ways: a flag added or dropped fails, and so does a row not named here. One line a row, its
/// id, then its flags, then its botanical family; a row without any stands with its id alone.
/// </summary>
/// <remarks>
/// Flags: Regulation (EU) 1169/2011, Annex II, and what the ingredient is. Sulphites on prawns and lobster: Food Addit Contam B 2014,
/// doi 10.1080/19393210.2013.848943, and Ital J Food Saf 2013 e18; in wine: Delegated Regulation (EU) 2019/934. Cured ham holds nitrite,
/// which is no sulphite. Families: Apiaceae (Umbelliferae) as in any flora; relatives in allergy: Schweiz Med Wochenschr 1985;115:258.
/// </remarks>
public sealed class AllergenTableTests
{
    private const string Table = """
        beef-marrow-bone
        beef-bones
        beef-knuckle
        beef-neck-bone
        beef-shank
        beef-short-rib
        oxtail
        beef-foot
        beef-tendon
        beef-suet
        beef-trim-fat
        lean-beef
        veal-knuckle
        veal-breast
        veal-shank
        calf-foot
        veal-bones
        chicken-carcass
        chicken-back
        chicken-neck
        chicken-wing
        chicken-feet
        chicken-feet-boiled
        chicken-drumstick
        stewing-hen
        chicken-skin
        chicken-giblets
        turkey-neck
        turkey-wing
        turkey-back
        turkey-carcass
        turkey-skin
        duck-carcass
        goose
        pork-trotter
        pork-skin
        pork-ear
        pork-tail
        pork-neck-bone
        pork-back-rib
        pork-sparerib
        pork-hock
        ham-bone
        lamb-neck
        lamb-foreshank
        venison-bone
        rabbit-carcass
        pheasant
        quail
        fish-frame fish
        fish-head fish
        fish-skin fish
        flatfish-bone fish
        shrimp-shell crustacean sulphites
        shrimp-head crustacean sulphites
        crab-shell crustacean sulphites
        lobster-shell crustacean sulphites
        onion
        carrot Apiaceae
        celery celery Apiaceae
        leek
        garlic
        shallot
        parsnip Apiaceae
        celeriac celery Apiaceae
        fennel Apiaceae
        mushroom
        shiitake-dried
        mushroom-portabella
        tomato
        tomato-paste
        scallion
        turnip
        vegetable-trimmings celery
        parsley Apiaceae
        thyme
        thyme-dried
        bay-leaf
        peppercorn
        clove
        ginger
        kombu
        bonito-flakes fish
        white-wine sulphites
        red-wine sulphites
        vinegar
        cider-vinegar
        salt
        soy-sauce gluten soy
        egg-white egg
        gelatin-powder
        chicken-thigh
        chicken-leg
        whole-chicken
        chicken-liver
        duck
        pork-back-fat
        pork-leg-bone
        ham-shank
        smoked-hock
        lamb-bones
        lamb-breast
        goat
        rabbit
        hare
        partridge
        pheasant-carcass
        oily-fish-frame fish
        mussel mollusc
        clam mollusc
        oyster mollusc
        scallop mollusc
        squid mollusc
        canned-tomato
        daikon
        sweetcorn-cob
        pea-pod
        green-pepper
        cabbage
        potato
        beetroot
        rosemary
        sage
        tarragon
        star-anise
        cassia
        coriander-seed Apiaceae
        fennel-seed Apiaceae
        cardamom
        allspice
        juniper
        mustard-seed mustard
        lemongrass
        galangal
        dried-anchovy fish
        dried-shrimp crustacean sulphites
        dried-scallop mollusc
        sherry sulphites
        port sulphites
        sake
        mirin
        coarse-salt
        butter milk
        oil
        fish-sauce fish
        white-stock-ready celery
        brown-stock-ready celery
        miso gluten soy
        fish-gelatin-powder fish
        spent-bones
        """;

    private static readonly Dictionary<string, string> Expected = Table
        .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => line.Split(' ', 2))
        .ToDictionary(parts => parts[0], parts => parts.Length > 1 ? parts[1] : "", StringComparer.Ordinal);

    [Fact]
    public void Every_row_is_named_here() => Assert.Equal(
        Expected.Keys.Order(StringComparer.Ordinal),
        StandardLarder.Table.Ingredients.Select(row => row.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_row_has_these_flags_and_no_other() => Assert.Equal(
        Expected.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key} {pair.Value}".TrimEnd()),
        StandardLarder.Table.Ingredients.OrderBy(row => row.Id, StringComparer.Ordinal).Select(Written),
        StringComparer.Ordinal);

    // Order of the flags does not matter, here or in the file: alphabetical, the family last.
    private static string Written(Ingredient row) => $"{row.Id} {string.Join(' ', row.Allergens.Order(StringComparer.Ordinal))} {row.Family}"
        .Replace("  ", " ", StringComparison.Ordinal).TrimEnd();
}
