using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>
/// What there is to be sent, found by looking: the links of every page from the front page on, the forms of every page, and the
/// operations of the OpenAPI document. Nobody lists a field, so nobody forgets one.
/// </summary>
internal sealed partial class FuzzSite
{
    private const int MostOfAShape = 3;
    private const int MostPages = 160;

    private readonly Dictionary<string, string> pages = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageForm> forms = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> shapes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageForm> makers = new(StringComparer.Ordinal);

    private FuzzSite(FuzzClient client) => Client = client;

    public FuzzClient Client { get; }

    /// <summary>Pages that were seen.</summary>
    public IReadOnlyCollection<string> Pages => pages.Keys;

    public List<FuzzTarget> Targets { get; } = [];

    /// <summary>What failed while looking.</summary>
    public List<FuzzAnswer> Failures { get; } = [];

    /// <summary>Words that pages offer, by field.</summary>
    public Dictionary<string, HashSet<string>> Words { get; } = new(StringComparer.Ordinal);

    /// <summary>Looks over the app, sends every posted form once so that there are things to change, and looks again.</summary>
    public static async Task<FuzzSite> ExploreAsync(HttpClient http, string units, CancellationToken cancellationToken)
    {
        FuzzSite site = new(new FuzzClient(http, units));
        await site.LookAsync(cancellationToken);
        foreach (PageForm form in site.forms.Values.Where(form => form.IsPost && !form.Key.Contains("delete", StringComparison.Ordinal)).ToList())
        {
            await site.MakeAsync(form, cancellationToken);
        }

        site.shapes.Clear();
        await site.LookAsync(cancellationToken);
        foreach (PageForm form in site.forms.Values.Where(form => form.Open.Any()))
        {
            string shape = Shape(form.Page);
            site.Targets.Add(new FormTarget(site.Client, form)
            {
                Renew = site.makers.TryGetValue(shape, out PageForm? maker) ? stop => site.MakeAsync(maker, stop) : null,
            });
        }

        FuzzAnswer described = await site.Client.GetAsync("/openapi/v1.json", cancellationToken);
        FuzzAnswer listed = await site.Client.GetAsync("/api/batches", cancellationToken);
        string batch = (string?)(JsonNode.Parse(listed.Body) as JsonArray)?.FirstOrDefault()?["id"] ?? Guid.Empty.ToString();
        site.Targets.AddRange(JsonTarget.All(site.Client, JsonNode.Parse(described.Body)!, site.Words, path => path.Replace("{id}", batch, StringComparison.Ordinal)));
        return site;
    }

    /// <summary>An address without its query and with ids left out.</summary>
    public static string Shape(string address)
    {
        string[] parts = address.Split('?', '#')[0].Trim('/').Split('/');
        return "/" + string.Join('/', parts.Select((part, index) => Guid.TryParse(part, out _) || (index == 1 && parts.Length > 1 && parts[0] is not "kitchen" && part is not ("new" or "start" or "print")) || (index == 2 && parts[0] is "kitchen" && part is not "new") ? "*" : part));
    }

    private async Task LookAsync(CancellationToken cancellationToken)
    {
        Queue<string> waiting = new(["/", .. pages.Keys.Where(page => pages[page].Length > 0)]);
        HashSet<string> met = [.. waiting];
        while (waiting.TryDequeue(out string? page) && pages.Count < MostPages)
        {
            FuzzAnswer answer = await Client.GetAsync(page, cancellationToken);
            if (answer.IsOurFault)
            {
                Failures.Add(answer);
            }

            pages[page] = answer.Status == HttpStatusCode.OK ? "" : answer.Status.ToString();
            if (answer.Status != HttpStatusCode.OK || !answer.Body.Contains("<html", StringComparison.Ordinal))
            {
                continue;
            }

            foreach (PageForm form in PageForm.Read(page, answer.Body))
            {
                // The same form with more choices tells more.
                forms[form.Key] = form;
                foreach (FuzzField field in form.Fields.Where(field => field.Kind is FieldKind.Choice || (field.Kind is FieldKind.Hidden && field.Name is "kind")))
                {
                    (Words.TryGetValue(field.Name, out HashSet<string>? words) ? words : Words[field.Name] = new(StringComparer.Ordinal))
                        .UnionWith([.. field.Options.Where(option => option.Length > 0), .. field.Kind is FieldKind.Hidden ? [field.Value] : Array.Empty<string>()]);
                }
            }

            foreach (string link in Links().Matches(answer.Body).Select(match => WebUtility.HtmlDecode(match.Groups["link"].Value).Split('#')[0]))
            {
                string shape = Shape(link);
                if (!met.Contains(link) && !Skipped().IsMatch(link) && shapes.GetValueOrDefault(shape) < MostOfAShape)
                {
                    shapes[shape] = shapes.GetValueOrDefault(shape) + 1;
                    met.Add(link);
                    waiting.Enqueue(link);
                }
            }
        }
    }

    /// <summary>Sends a form as it stands, blank names filled in, and remembers where it leads.</summary>
    private async Task<string?> MakeAsync(PageForm form, CancellationToken cancellationToken)
    {
        FormTarget target = new(Client, form);
        Dictionary<string, string> named = new(StringComparer.Ordinal);
        foreach (FuzzField field in form.Open.Where(field => field is { Kind: FieldKind.Text, Value.Length: 0 } && field.Name is "name"))
        {
            named[field.Name] = "Made to be tried";
        }

        FuzzAnswer answer = await target.SendAsync(named, cancellationToken);
        if (answer.IsOurFault)
        {
            Failures.Add(answer);
        }

        if (answer.Location is { } location && location.StartsWith('/'))
        {
            makers.TryAdd(Shape(location), form);
            pages.TryAdd(location.Split('#')[0], "new");
            return location.Split('#')[0];
        }

        return null;
    }

    [GeneratedRegex("<a [^>]*href=\"(?<link>/[^\"]*)\"", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Links();

    /// <summary>Files to take away, the switch of measures, and addresses that end a visit.</summary>
    [GeneratedRegex("^/(units|cooling/home|_|css|js)|\\.(ics|csv|json|svg)|/photos/", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Skipped();
}
