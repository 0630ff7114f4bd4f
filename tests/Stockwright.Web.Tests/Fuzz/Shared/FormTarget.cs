namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>A form of a page. One that is posted is fetched anew each time, as a cook would open it: token, key and version are fresh.</summary>
internal sealed class FormTarget : FuzzTarget
{
    private readonly string key;
    private PageForm form;
    private string page;

    public FormTarget(FuzzClient client, PageForm form)
        : base(client, form.Key)
    {
        this.form = form;
        key = form.Key;
        page = form.Page;
        Fields = form.Fields;
    }

    public PageForm Form => form;

    /// <summary>Makes another page of this kind when the form is gone from this one, say after a batch was closed; gives its address.</summary>
    public Func<CancellationToken, Task<string?>>? Renew { get; init; }

    public override async Task<FuzzAnswer> SendAsync(IReadOnlyDictionary<string, string> changes, CancellationToken cancellationToken)
    {
        if (form.IsPost)
        {
            FuzzAnswer opened = await OpenAsync(cancellationToken);
            if (opened.IsOurFault)
            {
                return opened;
            }
        }

        List<KeyValuePair<string, string>> values = [];
        foreach (FuzzField field in form.Fields)
        {
            string value = changes.TryGetValue(field.Name, out string? changed) ? changed : field.Value;
            if (value.Length > 0 || field.Kind is FieldKind.Text or FieldKind.Hidden)
            {
                values.Add(KeyValuePair.Create(field.Name, value));
            }
        }

        string said = string.Join('&', values.Where(value => !value.Key.StartsWith("__", StringComparison.Ordinal)).Select(value => $"{Uri.EscapeDataString(value.Key)}={Uri.EscapeDataString(value.Value)}"));
        string path = form.Action.Split('#')[0];
        if (!form.IsPost)
        {
            return await Client.GetAsync($"{path.Split('?')[0]}?{said}", cancellationToken);
        }

        FuzzAnswer answer = await Client.SendAsync(() => new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = Content(values) }, $"POST {path} {said}", cancellationToken);
        if (answer is { IsOurFault: false, Location: { } location } && location.StartsWith('/'))
        {
            // What was stored must also be readable.
            FuzzAnswer shown = await Client.GetAsync(location.Split('#')[0], cancellationToken);
            return shown.IsOurFault ? shown with { Request = $"{answer.Request}, then {shown.Request}" } : answer with { Took = shown.Took > answer.Took ? shown.Took : answer.Took };
        }

        return answer;
    }

    public override string ProblemAt(FuzzAnswer answer, FuzzField field) => field.ElementId.Length == 0 ? "" : PageForm.ProblemAt(answer.Body, field.ElementId);

    private async Task<FuzzAnswer> OpenAsync(CancellationToken cancellationToken)
    {
        FuzzAnswer opened = await Client.GetAsync(page, cancellationToken);
        if (!Take(opened) && Renew is not null && await Renew(cancellationToken) is { } other)
        {
            page = other;
            opened = await Client.GetAsync(page, cancellationToken);
            Take(opened);
        }

        return opened;
    }

    private bool Take(FuzzAnswer opened)
    {
        // By its words and not all its fields: a choice may have gone meanwhile.
        if (PageForm.Read(page, opened.Body).FirstOrDefault(other => string.Equals(other.Key, key, StringComparison.Ordinal)) is not { } fresh)
        {
            return false;
        }

        form = fresh;
        return true;
    }

    private HttpContent Content(List<KeyValuePair<string, string>> values)
    {
        if (!form.IsMultipart)
        {
            return new FormUrlEncodedContent(values);
        }

        MultipartFormDataContent parts = [];
        foreach ((string name, string value) in values)
        {
            parts.Add(new StringContent(value), $"\"{name}\"");
        }

        return parts;
    }
}
