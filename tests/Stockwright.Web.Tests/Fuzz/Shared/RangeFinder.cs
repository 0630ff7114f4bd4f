namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>
/// Asks a form or an operation for its ranges the way a careless cook would: by typing numbers no kitchen has and reading what the
/// app says. A field that says nothing may count only with another choice beside it, so each choice is tried until it speaks.
/// </summary>
internal static class RangeFinder
{
    private const int MostRequests = 160;

    private static readonly string[] Absurd = ["-98765432", "98765432"];

    public static async Task FindAsync(FuzzTarget target, List<FuzzAnswer> failures, CancellationToken cancellationToken)
    {
        int sent = 0;
        List<FuzzField> silent = [.. target.Fields.Where(field => field is { Kind: FieldKind.Text, IsNumber: true })];
        Queue<Dictionary<string, string>> settings = new([new(StringComparer.Ordinal)]);
        HashSet<string> tried = new(StringComparer.Ordinal);
        while (silent.Count > 0 && sent < MostRequests && settings.TryDequeue(out Dictionary<string, string>? setting))
        {
            if (!await HearAsync(setting) || setting.Count >= 2)
            {
                continue;
            }

            foreach (FuzzField choice in target.Fields.Where(field => field.Kind == FieldKind.Choice && !setting.ContainsKey(field.Name)))
            {
                // Many options of one list (recipes, cuts) differ in nothing that matters here.
                foreach (string option in choice.Options.Where(option => !string.Equals(option, choice.Value, StringComparison.Ordinal)).Take(choice.Options.Count > 12 && choice.Name is not "kind" ? 2 : 40))
                {
                    Dictionary<string, string> next = new(setting, StringComparer.Ordinal) { [choice.Name] = option };
                    if (tried.Add(string.Join('&', next.Select(pair => $"{pair.Key}={pair.Value}").Order(StringComparer.Ordinal))))
                    {
                        settings.Enqueue(next);
                    }
                }
            }
        }

        await FillAsync();

        // True when a setting made a field speak, or is the first: only from such is it worth going on.
        async Task<bool> HearAsync(Dictionary<string, string> setting)
        {
            bool heard = setting.Count == 0;
            bool again = true;
            while (again && silent.Count > 0 && sent < MostRequests)
            {
                again = false;
                foreach (string absurd in Absurd.TakeWhile(_ => silent.Count > 0))
                {
                    Dictionary<string, string> changes = new(setting, StringComparer.Ordinal);
                    foreach ((string name, (StatedRange range, _)) in target.Ranges)
                    {
                        changes[name] = range.LowText;
                    }

                    foreach (FuzzField field in silent)
                    {
                        changes[field.Name] = absurd;
                    }

                    sent++;
                    FuzzAnswer answer = await target.SendAsync(changes, cancellationToken);
                    if (answer.IsOurFault && !answer.IsTurnedAway)
                    {
                        failures.Add(answer);
                    }

                    foreach (FuzzField field in silent.ToList())
                    {
                        if (StatedRange.Read(target.ProblemAt(answer, field)) is { } range)
                        {
                            target.Ranges[field.Name] = (range, setting);
                            silent.Remove(field);
                            heard = again = true;
                        }
                    }
                }
            }

            return heard;
        }

        // Fields without which there is no answer: in the middle of their range.
        async Task FillAsync()
        {
            Random random = new(7);
            for (int round = 0; round < 4; round++)
            {
                FuzzAnswer answer = await target.SendAsync(target.Needed, cancellationToken);
                FuzzField[] missing = [.. target.Fields.Where(field => !target.Needed.ContainsKey(field.Name) && target.ProblemAt(answer, field).Length > 0)];
                if (missing.Length == 0)
                {
                    return;
                }

                foreach (FuzzField field in missing)
                {
                    target.Needed[field.Name] = target.Ranges.TryGetValue(field.Name, out var known) ? known.Range.Inside(random)
                        : field.Kind == FieldKind.Choice ? field.Options.FirstOrDefault(option => option.Length > 0) ?? ""
                        : "Tried";
                }
            }
        }
    }
}
