using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Stockwright.Web.Tests.Drawing;

/// <summary>Renders one component as the server does.</summary>
internal static class Rendering
{
    public static async Task<string> HtmlAsync<TComponent>(params (string Name, object? Value)[] parameters)
        where TComponent : IComponent
    {
        await using ServiceProvider services = new ServiceCollection().BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, NullLoggerFactory.Instance);
        ParameterView view = ParameterView.FromDictionary(parameters.ToDictionary(pair => pair.Name, pair => pair.Value, StringComparer.Ordinal));
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<TComponent>(view)).ToHtmlString());
    }

    public static async Task<XElement> XmlAsync<TComponent>(params (string Name, object? Value)[] parameters)
        where TComponent : IComponent
    {
        string html = await HtmlAsync<TComponent>(parameters);
        return XDocument.Parse("<root>" + html + "</root>").Root!;
    }

    /// <summary>A culture that writes 1,5, made by hand because the build carries no culture data.</summary>
    public static CultureInfo CommaCulture()
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "~";
        return culture;
    }
}
