using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Stockwright.Web.Drawing;

/// <summary>An SVG text element. Razor keeps the tag of that name for itself inside code, so it is written here.</summary>
public sealed class SvgText : ComponentBase
{
    [Parameter, EditorRequired]
    public double X { get; set; }

    [Parameter, EditorRequired]
    public double Y { get; set; }

    [Parameter, EditorRequired]
    public string Value { get; set; } = "";

    [Parameter]
    public string? Class { get; set; }

    /// <summary>start, middle or end.</summary>
    [Parameter]
    public string Anchor { get; set; } = "start";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", Svg.Number(X));
        builder.AddAttribute(2, "y", Svg.Number(Y));
        builder.AddAttribute(3, "text-anchor", Anchor);
        builder.AddAttribute(4, "class", Class);
        builder.AddContent(5, Value);
        builder.CloseElement();
    }
}
