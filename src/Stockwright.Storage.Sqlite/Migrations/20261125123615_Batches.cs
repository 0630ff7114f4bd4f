using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stockwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Batches : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "CalendarToken",
                table: "Kitchens",
                type: "TEXT",
                maxLength: 200,
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Batches",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    KitchenId = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    RecipeName = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    PotName = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Query = table.Column<string>(type: "TEXT", nullable: false),
                    Snapshot = table.Column<string>(type: "TEXT", nullable: false),
                    PlanText = table.Column<string>(type: "TEXT", nullable: false),
                    LimitId = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    BeginsUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    StartedUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Batches", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Batches_Kitchens_KitchenId",
                        column: x => x.KitchenId,
                        principalTable: "Kitchens",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LogEntries",
                columns: table => new
                {
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    BatchId = table.Column<Guid>(type: "TEXT", nullable: false),
                    HappenedUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ReceivedUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Who = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    DeviceOffsetSeconds = table.Column<double>(type: "REAL", nullable: true),
                    DeviceZone = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    Corrects = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LogEntries", x => x.Sequence);
                    table.UniqueConstraint("AK_LogEntries_Id", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LogEntries_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Photos",
                columns: table => new
                {
                    EntryId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Width = table.Column<int>(type: "INTEGER", nullable: false),
                    Height = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Photos", x => x.EntryId);
                    table.ForeignKey(
                        name: "FK_Photos_LogEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "LogEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Batches_KitchenId_BeginsUtc",
                table: "Batches",
                columns: new[] { "KitchenId", "BeginsUtc" });

            migrationBuilder.CreateIndex(
                name: "IX_LogEntries_BatchId_Sequence",
                table: "LogEntries",
                columns: new[] { "BatchId", "Sequence" });

            // A record of what was done is worth something only if nobody can change it afterwards, this program included.
            // A later migration that rebuilds one of these tables must make its triggers again.
            foreach (string table in new[] { "Batches", "LogEntries", "Photos" })
            {
                migrationBuilder.Sql($"CREATE TRIGGER \"{table}_NoUpdate\" BEFORE UPDATE ON \"{table}\" BEGIN SELECT RAISE(ABORT, 'Entries are only added.'); END;");
                migrationBuilder.Sql($"CREATE TRIGGER \"{table}_NoDelete\" BEFORE DELETE ON \"{table}\" BEGIN SELECT RAISE(ABORT, 'Entries are only added.'); END;");
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Photos");

            migrationBuilder.DropTable(
                name: "LogEntries");

            migrationBuilder.DropTable(
                name: "Batches");

            migrationBuilder.DropColumn(
                name: "CalendarToken",
                table: "Kitchens");
        }
    }
}
