using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Calendars;

/// <summary>
/// A strict reader of calendars, written from RFC 5545 alone and sharing nothing with the library that writes ours. Each check
/// names its section. Asks for more than the RFC where we promise more (UTC throughout).
/// </summary>
internal static partial class CalendarRules
{
    private static readonly string[] OnceInEvent = ["UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY", "DESCRIPTION", "STATUS", "SEQUENCE", "LAST-MODIFIED", "TRANSP", "URL", "CLASS", "CREATED"];
    private static readonly string[] TextValues = ["SUMMARY", "DESCRIPTION", "NAME"];
    private static readonly string[] UtcValues = ["DTSTAMP", "DTSTART", "DTEND", "LAST-MODIFIED"];

    /// <summary>Holds a calendar against the rules and gives what it says.</summary>
    public static Component Read(byte[] file)
    {
        List<Property> lines = [.. Unfold(file).Select(Parse)];
        Stack<Component> open = new();
        Component? whole = null;
        foreach (Property line in lines)
        {
            // 3.4: nothing before or after the one calendar object we promise.
            Assert.True(whole is null, "3.4: there is something after END:VCALENDAR");
            if (line.Name is "BEGIN")
            {
                Component begun = new(line.Value);
                if (open.TryPeek(out Component? parent))
                {
                    parent.Parts.Add(begun);
                }

                open.Push(begun);
            }
            else if (line.Name is "END")
            {
                // 3.6: components are delimited by matching BEGIN and END.
                Component ended = open.Pop();
                Assert.Equal(ended.Name, line.Value);
                whole = open.Count == 0 ? ended : null;
            }
            else
            {
                Assert.True(open.Count > 0, "3.4: a property outside the calendar");
                open.Peek().Properties.Add(line);
            }
        }

        Assert.NotNull(whole);
        CheckCalendar(whole);
        return whole;
    }

    private static List<string> Unfold(byte[] file)
    {
        string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file);
        Assert.False(text.StartsWith('\uFEFF'), "3.1: a byte order mark is no part of a content line");
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);

        // 3.1: lines are ended by CRLF, and neither stands alone.
        Assert.DoesNotMatch(@"\r(?!\n)|(?<!\r)\n", text);
        List<string> lines = [];
        int from = 0;
        while (from < file.Length)
        {
            int to = file.AsSpan(from).IndexOf("\r\n"u8) + from;

            // 3.1: no longer than 75 octets, the break not counted; a fold does not cut a character of several octets.
            Assert.InRange(to - from, 1, 75);
            string line = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file, from, to - from);
            if (line[0] is ' ' or '\t')
            {
                lines[^1] += line[1..];
            }
            else
            {
                lines.Add(line);
            }

            from = to + 2;
        }

        // 3.1: no control characters but the tab (CONTROL is not among VALUE-CHAR).
        Assert.All(lines, line => Assert.DoesNotContain(line, char.IsControl));
        return lines;
    }

    private static Property Parse(string line)
    {
        // 3.1: contentline = name *(";" param ) ":" value
        Match match = ContentLine().Match(line);
        Assert.True(match.Success, $"3.1: not a content line: {line}");
        Dictionary<string, string> parameters = new(StringComparer.Ordinal);
        foreach (Capture parameter in match.Groups["param"].Captures)
        {
            string[] parts = parameter.Value.Split('=', 2);
            Assert.True(parameters.TryAdd(parts[0], parts[1]), $"3.2: a parameter twice: {line}");
        }

        return new Property(match.Groups["name"].Value, parameters, match.Groups["value"].Value);
    }

    private static void CheckCalendar(Component calendar)
    {
        // 3.6: VERSION and PRODID are required, once each; 3.7.4: the version is 2.0; 3.7.2: METHOD at most once.
        Assert.Equal("VCALENDAR", calendar.Name);
        Assert.Equal("2.0", calendar.One("VERSION"));
        Assert.NotEmpty(calendar.One("PRODID"));
        Assert.Equal("PUBLISH", calendar.One("METHOD"));
        CheckText(calendar);

        // RFC 7986, 5.7: the value of REFRESH-INTERVAL is a duration, and says so.
        Property refresh = Assert.Single(calendar.Properties, property => property.Name is "REFRESH-INTERVAL");
        Assert.Equal("DURATION", refresh.Parameters["VALUE"]);
        Assert.Matches(DurationValue(), refresh.Value);

        // 3.8.4.7: the identity of an event is its UID.
        Assert.Distinct(calendar.Events.Select(part => part.One("UID")), StringComparer.Ordinal);
        Assert.All(calendar.Parts, part => Assert.Equal("VEVENT", part.Name));
        Assert.All(calendar.Events, CheckEvent);
    }

    private static void CheckEvent(Component told)
    {
        foreach (string name in OnceInEvent)
        {
            // 3.6.1: these must not occur more than once.
            Assert.True(told.Properties.Count(property => string.Equals(property.Name, name, StringComparison.Ordinal)) <= 1, $"3.6.1: {name} more than once");
        }

        // 3.6.1: UID and DTSTAMP are required. RFC 5546, 3.2.1: so are DTSTART and SUMMARY in what is published.
        Assert.NotEmpty(told.One("UID"));
        Assert.NotEmpty(told.One("SUMMARY"));
        foreach (string name in UtcValues)
        {
            // 3.3.5, form 2: UTC, with Z and without TZID. 3.8.7.2 and 3.8.7.3 ask for it in DTSTAMP and LAST-MODIFIED.
            Property property = Assert.Single(told.Properties, property => string.Equals(property.Name, name, StringComparison.Ordinal));
            Assert.False(property.Parameters.ContainsKey("TZID"), "3.2.19: TZID must not be applied to UTC");
            Utc(property.Value);
        }

        // 3.8.2.2: DTEND is later than DTSTART. 3.6.1: DTEND and DURATION not both.
        Assert.True(Utc(told.One("DTEND")) > Utc(told.One("DTSTART")), "3.8.2.2: it ends before it begins");
        Assert.DoesNotContain(told.Properties, property => property.Name is "DURATION");

        // 3.8.7.4: an integer from zero. 3.8.1.11: what an event's status may be.
        Assert.Matches(@"^\d+$", told.One("SEQUENCE"));
        Assert.True(told.One("STATUS") is "TENTATIVE" or "CONFIRMED" or "CANCELLED", "3.8.1.11: not a status of an event");
        CheckText(told);
        Assert.All(told.Parts, alarm =>
        {
            // 3.6.6: a displayed alarm has ACTION, DESCRIPTION and TRIGGER, once each. 3.8.6.3: TRIGGER is a duration by default.
            Assert.Equal("VALARM", alarm.Name);
            Assert.Equal("DISPLAY", alarm.One("ACTION"));
            Assert.NotEmpty(alarm.One("DESCRIPTION"));
            Assert.Matches(DurationValue(), alarm.One("TRIGGER"));
            CheckText(alarm);
        });
    }

    private static void CheckText(Component part)
    {
        // 3.3.11: backslash, comma and semicolon are escaped, a line break is \n, and nothing else is.
        foreach (Property property in part.Properties.Where(property => TextValues.Contains(property.Name, StringComparer.Ordinal)))
        {
            Assert.True(TextValue().IsMatch(property.Value), $"3.3.11: {property.Name}: {property.Value}");
        }
    }

    public static DateTimeOffset Utc(string value) =>
        DateTimeOffset.ParseExact(value, "yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    /// <summary>A line with its parameters.</summary>
    public sealed record Property(string Name, IReadOnlyDictionary<string, string> Parameters, string Value);

    /// <summary>A component with its properties and the components in it.</summary>
    public sealed record Component(string Name)
    {
        public List<Property> Properties { get; } = [];

        public List<Component> Parts { get; } = [];

        public IEnumerable<Component> Events => Parts.Where(part => part.Name is "VEVENT");

        public string One(string name) => Assert.Single(Properties, property => string.Equals(property.Name, name, StringComparison.Ordinal)).Value;

        /// <summary>A text as it was meant: 3.3.11.</summary>
        public string Text(string name) => Escape().Replace(One(name), match => match.Value[1] is 'n' or 'N' ? "\n" : match.Value[1..]);
    }

    [GeneratedRegex("^(?<name>[A-Za-z0-9-]+)(;(?<param>[A-Za-z0-9-]+=(\"[^\"]*\"|[^\";:,]*)(,(\"[^\"]*\"|[^\";:,]*))*))*:(?<value>.*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ContentLine();

    [GeneratedRegex(@"^([^\\,;]|\\[\\,;nN])*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex TextValue();

    // 3.3.6: weeks alone, or days, or a time that follows days or stands by itself.
    [GeneratedRegex(@"^[+-]?P(\d+W|\d+D(T(\d+H(\d+M(\d+S)?)?|\d+M(\d+S)?|\d+S))?|T(\d+H(\d+M(\d+S)?)?|\d+M(\d+S)?|\d+S))$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DurationValue();

    [GeneratedRegex(@"\\[\\,;nN]", RegexOptions.None, 1000)]
    private static partial Regex Escape();
}
