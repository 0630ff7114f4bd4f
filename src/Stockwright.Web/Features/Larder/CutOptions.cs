using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Components;
using Stockwright.Larder;
using UnitsNet;

namespace Stockwright.Web.Features.Larder;

/// <summary>
/// Options of a list of cuts, shelf by shelf. A page has many such lists with the same options, so they are written once as
/// markup rather than once a list as elements.
/// </summary>
public sealed class CutOptions
{
    private readonly LarderTable larder;
    private readonly HashSet<string> listed = new(StringComparer.Ordinal);
    private readonly string options;

    private CutOptions(LarderTable larder, Func<Ingredient, bool> which)
    {
        this.larder = larder;
        StringBuilder html = new();
        foreach (IGrouping<IngredientGroup, Ingredient> shelf in larder.Ingredients.Where(ingredient => ingredient.IsOffered && which(ingredient)).GroupBy(ingredient => ingredient.Group))
        {
            html.Append("<optgroup label=\"").Append(HtmlEncoder.Default.Encode(IngredientFields.Shelf.LabelOf(shelf.Key))).Append("\">");
            foreach (Ingredient ingredient in shelf)
            {
                listed.Add(ingredient.Id);
                html.Append(Option(ingredient.Id, ingredient.Name));
            }

            html.Append("</optgroup>");
        }

        options = html.ToString();
    }

    /// <summary>Everything offered.</summary>
    public static CutOptions All(LarderTable larder) => Of(larder, _ => true);

    /// <summary>What a stock may be made of.</summary>
    public static CutOptions Bones(LarderTable larder) =>
        Of(larder, ingredient => ingredient.Group is not (IngredientGroup.Aromatic or IngredientGroup.Liquid or IngredientGroup.Other));

    /// <summary>Cuts that give gelatin.</summary>
    public static CutOptions GivingGelatin(LarderTable larder) =>
        Of(larder, ingredient => StandardCuts.Table.ClassOf(ingredient) is not null && StandardCuts.Table.CollagenOf(ingredient).Value > Ratio.Zero);

    private static CutOptions Of(LarderTable larder, Func<Ingredient, bool> which)
    {
        ArgumentNullException.ThrowIfNull(larder);
        return new CutOptions(larder, which);
    }

    /// <summary>The options with one chosen; a name that is not among them is kept as one more.</summary>
    /// <param name="typed">What was typed or chosen; blank for nothing.</param>
    public MarkupString With(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (typed.Length == 0)
        {
            return new MarkupString(options);
        }

        if (!listed.Contains(typed))
        {
            string name = larder.TryFind(typed, out Ingredient? known) ? known.Name : typed.Length > 40 ? typed[..40] + "…" : typed;
            return new MarkupString(Chosen(Option(typed, name)) + options);
        }

        string plain = Option(typed, larder.Get(typed).Name);
        return new MarkupString(options.Replace(plain, Chosen(plain), StringComparison.Ordinal));
    }

    private static string Option(string id, string name) =>
        $"<option value=\"{HtmlEncoder.Default.Encode(id)}\">{HtmlEncoder.Default.Encode(name)}</option>";

    private static string Chosen(string option) => option.Insert(option.IndexOf('>', StringComparison.Ordinal), " selected");
}
