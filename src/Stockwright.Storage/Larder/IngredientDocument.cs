using Stockwright.Larder;
using UnitsNet;

namespace Stockwright.Storage.Larder;

/// <summary>A larder row as stored: fractions of mass, kilograms, kilograms per cubic metre.</summary>
internal sealed record IngredientDocument
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required IngredientGroup Group { get; init; }

    public string Use { get; init; } = "";

    public required StatedDocument WaterFraction { get; init; }

    public required StatedDocument ProteinFraction { get; init; }

    public required StatedDocument FatFraction { get; init; }

    public required StatedDocument AshFraction { get; init; }

    public StatedDocument? CollagenFraction { get; init; }

    public required StatedDocument TrueDensityKilogramsPerCubicMetre { get; init; }

    public StatedDocument? PackDensityKilogramsPerCubicMetre { get; init; }

    public StatedDocument? RoastLossFraction { get; init; }

    public StatedDocument? RefuseFraction { get; init; }

    public StatedDocument? BoneShareFraction { get; init; }

    public IReadOnlyList<PieceDocument> Pieces { get; init; } = [];

    public IReadOnlyList<string> Allergens { get; init; } = [];

    public string? Family { get; init; }

    public string? UsdaNumber { get; init; }

    public string? Note { get; init; }

    public static IngredientDocument From(Ingredient row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Group = row.Group,
        Use = row.Use,
        WaterFraction = StatedDocument.From(row.Water, Fraction),
        ProteinFraction = StatedDocument.From(row.Protein, Fraction),
        FatFraction = StatedDocument.From(row.Fat, Fraction),
        AshFraction = StatedDocument.From(row.Ash, Fraction),
        CollagenFraction = StatedDocument.FromOptional(row.Collagen, Fraction),
        TrueDensityKilogramsPerCubicMetre = StatedDocument.From(row.TrueDensity, PerCubicMetre),
        PackDensityKilogramsPerCubicMetre = StatedDocument.FromOptional(row.PackDensity, PerCubicMetre),
        RoastLossFraction = StatedDocument.FromOptional(row.RoastLoss, Fraction),
        RefuseFraction = StatedDocument.FromOptional(row.Refuse, Fraction),
        BoneShareFraction = StatedDocument.FromOptional(row.BoneShare, Fraction),
        Pieces = [.. row.Pieces.Select(piece => new PieceDocument(
            piece.Name, piece.Plural, StatedDocument.From(piece.Mass, mass => mass.Kilograms), piece.IsTrimmed))],
        Allergens = row.Allergens,
        Family = row.Family,
        UsdaNumber = row.UsdaNumber,
        Note = row.Note,
    };

    public Ingredient ToIngredient() => new()
    {
        Id = Id,
        Name = Name,
        Group = Group,
        Use = Use,
        Water = WaterFraction.To(FromFraction),
        Protein = ProteinFraction.To(FromFraction),
        Fat = FatFraction.To(FromFraction),
        Ash = AshFraction.To(FromFraction),
        Collagen = CollagenFraction?.To(FromFraction),
        TrueDensity = TrueDensityKilogramsPerCubicMetre.To(FromPerCubicMetre),
        PackDensity = PackDensityKilogramsPerCubicMetre?.To(FromPerCubicMetre),
        RoastLoss = RoastLossFraction?.To(FromFraction),
        Refuse = RefuseFraction?.To(FromFraction),
        BoneShare = BoneShareFraction?.To(FromFraction),
        Pieces = [.. Pieces.Select(piece => new Piece(
            piece.Name, piece.Kilograms.To(kilograms => Mass.FromKilograms(kilograms)), piece.IsTrimmed) { Plural = piece.Plural })],
        Allergens = Allergens,
        Family = Family,
        UsdaNumber = UsdaNumber,
        Note = Note,
    };

    private static double Fraction(Ratio ratio) => ratio.DecimalFractions;

    private static Ratio FromFraction(double fraction) => Ratio.FromDecimalFractions(fraction);

    private static double PerCubicMetre(Density density) => density.KilogramsPerCubicMeter;

    private static Density FromPerCubicMetre(double density) => Density.FromKilogramsPerCubicMeter(density);
}

/// <summary>How a cook counts, as stored.</summary>
internal sealed record PieceDocument(string Name, string Plural, StatedDocument Kilograms, bool IsTrimmed);
